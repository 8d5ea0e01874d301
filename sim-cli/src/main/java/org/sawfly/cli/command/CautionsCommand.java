package org.sawfly.cli.command;

import java.util.List;
import org.sawfly.cli.answer.AllCautions;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The whole list of cautions: {@code sawfly help cautions}. */
@Command(name = "cautions", hidden = true, header = "Everything to heed around the bench and the field.")
final class CautionsCommand implements Runnable {
    private static final String LIST = "cautions";

    private final Streams streams;

    private CautionsCommand(Streams streams) {
        this.streams = streams;
    }

    /** The command, with the list as its help. */
    static CommandLine line(Streams streams) {
        CommandLine line = new CommandLine(new CautionsCommand(streams));
        line.getHelpSectionMap()
                .put(LIST, help -> String.join(System.lineSeparator(), AllCautions.lines()) + System.lineSeparator());
        line.setHelpSectionKeys(List.of(LIST));
        return line;
    }

    @Override
    public void run() {
        AllCautions.lines().forEach(streams.out()::println);
    }
}
