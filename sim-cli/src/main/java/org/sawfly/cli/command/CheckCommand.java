package org.sawfly.cli.command;

import java.nio.file.Path;
import org.sawfly.cli.answer.CheckAnswer;
import org.sawfly.file.FileCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Reads a file and says what it found. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        header = {
            "Reads a file: everything wrong at once, what was assumed, what is trusted least.",
            "",
            "  sawfly check plover.yaml",
            "  sawfly check shorten-boom.yaml",
            ""
        })
final class CheckCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "FILE", description = "glider, launch or study")
    private Path file;

    @Mixin
    private OutputOptions output;

    private final Streams streams;

    CheckCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        output.check();
        output.deliver(CheckAnswer.of(file.toString(), FileCheck.of(file)), streams);
    }
}
