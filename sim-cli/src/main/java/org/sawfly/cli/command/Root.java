package org.sawfly.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program itself: the list of commands, help and version. */
@Command(
        name = "sawfly",
        mixinStandardHelpOptions = true,
        versionProvider = Root.Version.class,
        description = "Fly it before you saw it: what a change to a discus-launched glider does.",
        synopsisSubcommandLabel = "COMMAND")
public final class Root implements Runnable {
    @Spec
    private CommandSpec spec;

    private Root() {}

    /**
     * The command line with every command of the program.
     *
     * @param streams where the commands read and write
     * @return a fresh command line
     */
    public static CommandLine commandLine(Streams streams) {
        return new CommandLine(new Root())
                .setOut(streams.writer())
                .setErr(streams.errorWriter())
                .setUsageHelpWidth(80);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command is missing");
    }

    /** The version of this build. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            try (InputStream in = Root.class.getResourceAsStream("version.properties")) {
                Properties properties = new Properties();
                properties.load(in);
                return new String[] {"sawfly " + properties.getProperty("version")};
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
