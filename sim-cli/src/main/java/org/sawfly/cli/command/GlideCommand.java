package org.sawfly.cli.command;

import org.sawfly.cli.answer.GlideAnswer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Sink and elevator against speed. */
@Command(
        name = "glide",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "Sink and elevator position against speed, for each setting.",
            "",
            "  sawfly glide plover.yaml",
            "  sawfly glide plover.yaml --chart glide.png",
            ""
        })
final class GlideCommand implements Runnable {
    @Mixin
    private Asked asked;

    private final Streams streams;

    GlideCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        asked.deliver(GlideAnswer.of(asked.answer(null)), streams);
    }
}
