package org.sawfly.cli.command;

import java.util.List;
import org.sawfly.cli.answer.Case;
import org.sawfly.cli.answer.ToleranceAnswer;
import org.sawfly.study.Sensitivity;
import org.sawfly.study.Squareness;
import org.sawfly.study.Straying;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Errors on the bench. */
@Command(
        name = "tolerance",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "What an error on the bench costs, in millimetres a ruler finds.",
            "",
            "  sawfly tolerance plover.yaml",
            "  sawfly tolerance plover.yaml --chart tolerance.png",
            ""
        })
final class ToleranceCommand implements Runnable {
    @Mixin
    private Asked asked;

    @Mixin
    private RunOptions run;

    private final Streams streams;

    ToleranceCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        int threads = run.threads();
        Case answered = asked.answer(null);
        List<Sensitivity> errors = new Squareness(asked.bench(), answered.scenario(), answered.result())
                .all(ToleranceAnswer.HEIGHT, ToleranceAnswer.SINK_SHARE, threads);
        List<Straying> sideways = Straying.all(asked.bench(), answered.scenario(), threads);
        asked.deliver(ToleranceAnswer.of(answered, errors, sideways), streams);
    }
}
