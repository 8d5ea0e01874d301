package org.sawfly.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.cli.answer.BalanceAnswer;
import org.sawfly.cli.answer.Case;
import org.sawfly.glider.Glider;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.CgChoice;
import org.sawfly.stability.Margins;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Part by part. */
@Command(
        name = "balance",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "Part by part: lead for a wanted CG, what a gram costs where.",
            "",
            "  sawfly balance plover.yaml",
            "  sawfly balance plover.yaml --change boom.cut_mm=40 --keep cg",
            ""
        })
final class BalanceCommand implements Runnable {
    private static final int EACH_WAY = 3;

    @Mixin
    private Asked asked;

    private final Streams streams;

    BalanceCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        Case answered = asked.answer(null);
        Glider glider = answered.result().rebalanced().glider();
        ToDoubleFunction<Glider> margin = g -> Margins.share(
                g, answered.scenario().corrections(), asked.bench().models(), answered.air());
        double middle = Numbers.rounded(
                Unit.MILLIMETRE.fromSi(answered.result().margins().cg()), 0);
        List<CgChoice> choices = new ArrayList<>();
        for (int i = -EACH_WAY; i <= EACH_WAY; i++) {
            choices.add(CgChoice.of(glider, Unit.MILLIMETRE.toSi(middle + i), margin));
        }
        BalanceAnswer.Weighed weighed = new BalanceAnswer.Weighed(
                asked.file().weighedMass(), asked.file().weighedCgX());
        asked.deliver(BalanceAnswer.of(answered, weighed, choices), streams);
    }
}
