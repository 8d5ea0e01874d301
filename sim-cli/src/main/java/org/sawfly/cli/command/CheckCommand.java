package org.sawfly.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import org.sawfly.cli.answer.CheckAnswer;
import org.sawfly.file.FileCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Reads a file and says what it found. */
@Command(
        name = "check",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "Reads a file: everything wrong at once, what was assumed, what is trusted least.",
            "",
            "  sawfly check plover.yaml",
            "  sawfly check shorten-boom.yaml",
            ""
        })
final class CheckCommand implements Runnable {
    @Parameters(index = "0", paramLabel = "FILE", description = "glider, launch or study; - for standard input")
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
        boolean piped = file.toString().equals("-");
        String name = piped ? "standard input" : file.toString();
        output.deliver(CheckAnswer.of(name, piped ? piped(name) : FileCheck.of(file)), streams);
    }

    private FileCheck piped(String name) {
        try {
            return FileCheck.of(name, streams.in());
        } catch (IOException e) {
            throw new CommandException(Exit.NOT_ACCEPTED, "standard input cannot be read: " + e.getMessage());
        }
    }
}
