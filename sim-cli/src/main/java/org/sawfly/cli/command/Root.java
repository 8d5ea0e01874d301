package org.sawfly.cli.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.TextTable;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program itself: the list of commands, help and version. */
@Command(
        name = "sawfly",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class,
        header = {
            "Fly it before you saw it: what a change to a discus-launched glider does.",
            "",
            "  sawfly compare plover.yaml --change boom.cut_mm=40 --keep margin",
            "  sawfly vary plover.yaml --vary boom.cut_mm=0..80/10 --keep margin",
            ""
        },
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "sawfly GLIDER alone shows the card of that glider; sawfly COMMAND --help tells more."})
public final class Root implements Runnable {
    /** The command that a glider file without a command stands for. */
    public static final String CARD = "card";

    private static final List<String> EVERYDAY = List.of("check", "compare", "vary");

    @Spec
    private CommandSpec spec;

    private Root() {}

    /** The commands by name, in the order of the help. */
    private static final Map<String, Function<Streams, Object>> COMMANDS = commands();

    private static Map<String, Function<Streams, Object>> commands() {
        Map<String, Function<Streams, Object>> all = new LinkedHashMap<>();
        all.put("check", CheckCommand::new);
        all.put("compare", CompareCommand::new);
        all.put("vary", VaryCommand::new);
        all.put("fly", FlyCommand::new);
        all.put("balance", BalanceCommand::new);
        all.put("stability", StabilityCommand::new);
        all.put("glide", GlideCommand::new);
        all.put("boom", BoomCommand::new);
        all.put("tolerance", ToleranceCommand::new);
        all.put("tune", TuneCommand::new);
        all.put("scatter", ScatterCommand::new);
        all.put("swing", SwingCommand::new);
        all.put("calibrate", CalibrateCommand::new);
        all.put("verdict", VerdictCommand::new);
        all.put(CARD, CardCommand::new);
        all.put("cautions", CautionsCommand::line);
        return all;
    }

    /**
     * The command line for a first word: where that is the name of a command no other is made, which spares half of the
     * start.
     *
     * @param streams where the command reads and writes
     * @param first word after the program's name
     * @return a fresh command line
     */
    public static CommandLine commandLine(Streams streams, String first) {
        CommandLine line = new CommandLine(new Root());
        if (COMMANDS.containsKey(first)) {
            line.addSubcommand(COMMANDS.get(first).apply(streams));
        } else {
            line.addSubcommand(new HelpCommand());
            COMMANDS.values().forEach(command -> line.addSubcommand(command.apply(streams)));
        }
        return dressed(line, streams);
    }

    private static CommandLine dressed(CommandLine line, Streams streams) {
        line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, Root::commandList);
        line.getHelpSectionMap().remove(UsageMessageSpec.SECTION_KEY_COMMAND_LIST_HEADING);
        return line.setOut(streams.writer())
                .setErr(streams.errorWriter())
                .setColorScheme(Help.defaultColorScheme(Ansi.OFF))
                .setUsageHelpWidth(80)
                .setExpandAtFiles(false)
                .setCaseInsensitiveEnumValuesAllowed(true);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "a command or a glider file is missing");
    }

    private static String commandList(Help help) {
        List<Help> shown = help.subcommands().values().stream()
                .distinct()
                .filter(each -> !each.commandSpec().usageMessage().hidden())
                .toList();
        return group("Everyday:", shown.stream().filter(Root::isEveryday).toList())
                + group(
                        "Looking closer:",
                        shown.stream().filter(each -> !isEveryday(each)).toList());
    }

    private static boolean isEveryday(Help help) {
        return EVERYDAY.contains(help.commandSpec().name());
    }

    private static String group(String heading, List<Help> commands) {
        if (commands.isEmpty()) {
            return "";
        }
        TextTable table = TextTable.forColumns(
                Help.defaultColorScheme(Ansi.OFF),
                new Help.Column(14, 2, Help.Column.Overflow.SPAN),
                new Help.Column(66, 0, Help.Column.Overflow.WRAP));
        for (Help command : commands) {
            UsageMessageSpec usage = command.commandSpec().usageMessage();
            String[] words = usage.header().length > 0 ? usage.header() : usage.description();
            table.addRowValues(String.join(", ", command.commandSpec().names()), words.length == 0 ? "" : words[0]);
        }
        return System.lineSeparator() + heading + System.lineSeparator() + table;
    }
}
