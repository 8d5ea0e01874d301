package org.sawfly.cli.command;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.aero.Corrections;
import org.sawfly.cli.answer.BoomAnswer;
import org.sawfly.cli.answer.Case;
import org.sawfly.strength.BoomStrength;
import org.sawfly.strength.TailEffectiveness;
import org.sawfly.study.BoomLook;
import org.sawfly.study.Result;
import org.sawfly.study.SoftBoom;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Stiffness and strength of the boom. */
@Command(
        name = "boom",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "The boom: how stiff, what a throw asks of it, where it would go first.",
            "",
            "  sawfly boom plover.yaml --chart boom.png",
            "  sawfly boom plover.yaml --change boom.splice.behind_mm=430",
            ""
        })
final class BoomCommand implements Runnable {
    private static final double[] SPEEDS = {0, 5, 10, 15, 20, 25, 30, 35, 40, 45};

    @Mixin
    private Asked asked;

    private final Streams streams;

    BoomCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        Case answered = asked.answer(null);
        Result result = answered.result();
        BoomLook look = BoomLook.of(result);
        BoomLook today = null;
        if (!answered.changes().isEmpty()) {
            today = BoomLook.of(asked.bench().answer(asked.file().with(List.of())));
        }
        Corrections corrections = answered.scenario().corrections();
        BoomAnswer.Looked looked = new BoomAnswer.Looked(
                look,
                today,
                BoomStrength.limit(result.plan()),
                SoftBoom.of(asked.bench(), answered.scenario(), result),
                tails(look, corrections),
                today == null ? List.of() : tails(today, corrections));
        asked.deliver(BoomAnswer.of(answered, looked), streams);
    }

    private List<TailEffectiveness> tails(BoomLook look, Corrections corrections) {
        List<TailEffectiveness> tails = new ArrayList<>();
        for (double speed : SPEEDS) {
            tails.add(look.effectiveness(corrections, asked.bench().models(), speed));
        }
        return tails;
    }
}
