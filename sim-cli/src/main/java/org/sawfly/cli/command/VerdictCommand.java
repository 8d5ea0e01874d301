package org.sawfly.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sawfly.cli.answer.Answer;
import org.sawfly.cli.answer.VerdictAnswer;
import org.sawfly.cli.answer.VerdictAnswer.Entry;
import org.sawfly.cli.answer.VerdictAnswer.Side;
import org.sawfly.file.LogFile;
import org.sawfly.study.log.HeightLog;
import org.sawfly.study.log.LoggedLaunch;
import org.sawfly.study.statistics.Verdict;
import org.sawfly.study.statistics.Verdict.Launched;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Whether a change made launches higher. */
@Command(
        name = "verdict",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "Did it work: were the launches of one set-up higher, by the altimeter's logs.",
            "",
            "  sawfly verdict before.csv --against after.csv",
            "  sawfly verdict a1.csv a2.csv --against b1.csv b2.csv --order ABBAABBA",
            ""
        })
final class VerdictCommand implements Runnable {
    @Parameters(
            paramLabel = "LOG",
            arity = "1..*",
            description = "logs of set-up A: CSV with time_s and height_m, wind_mps if you like")
    private List<Path> logsOfA;

    @Option(names = "--against", paramLabel = "LOG", arity = "1..*", required = true, description = "logs of set-up B")
    private List<Path> logsOfB;

    @Option(
            names = "--order",
            paramLabel = "ABBA...",
            description = "in which order they were thrown, one letter for each throw found")
    private String order;

    @Option(names = "--one-clock", description = "the clock of the logs ran through all of them")
    private boolean oneClock;

    @Mixin
    private OutputOptions output;

    private final Streams streams;

    VerdictCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        output.check();
        if (oneClock && order != null) {
            throw new CommandException(Exit.WRONG_USE, "--order and --one-clock both tell the order; leave out one");
        }
        List<Path> paths = new ArrayList<>(logsOfA);
        paths.addAll(logsOfB);
        List<HeightLog> logs = LogFile.read(paths);
        List<List<LoggedLaunch>> found = logs.stream().map(LoggedLaunch::of).toList();
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < logs.size(); i++) {
            if (found.get(i).isEmpty()) {
                notes.add(logs.get(i).name() + ": no throw in it");
            }
        }
        List<LoggedLaunch> ofA = joined(found.subList(0, logsOfA.size()));
        List<LoggedLaunch> ofB = joined(found.subList(logsOfA.size(), found.size()));
        double[][] times = times(ofA, ofB);
        Side a = side("A", logsOfA, ofA, times[0], notes);
        Side b = side("B", logsOfB, ofB, times[1], notes);
        Answer answer = VerdictAnswer.of(a, b, judged(a, b, notes));
        notes.forEach(answer::warn);
        output.deliver(answer, streams);
    }

    private static Verdict judged(Side a, Side b, List<String> notes) {
        try {
            return Verdict.of(a.launched(), b.launched());
        } catch (IllegalArgumentException e) {
            notes.add(0, "no answer: " + e.getMessage());
            throw new CommandException(Exit.NO_ANSWER, String.join("\n  ", notes));
        }
    }

    private static List<LoggedLaunch> joined(List<List<LoggedLaunch>> lists) {
        return lists.stream().flatMap(List::stream).toList();
    }

    private static Side side(
            String name, List<Path> logs, List<LoggedLaunch> launches, double[] times, List<String> notes) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < launches.size(); i++) {
            LoggedLaunch one = launches.get(i);
            if (Double.isNaN(one.height())) {
                notes.add(one.place() + ": samples are missing in the climb; not used");
            } else {
                entries.add(new Entry(one, new Launched(one.height(), times[i], one.wind())));
            }
        }
        return new Side(name, logs.stream().map(Path::toString).toList(), entries);
    }

    /** When each launch of both sets was thrown, in any unit; NaN where nobody said. */
    private double[][] times(List<LoggedLaunch> ofA, List<LoggedLaunch> ofB) {
        double[][] times = {unknown(ofA), unknown(ofB)};
        if (order == null) {
            return times;
        }
        String letters = order.strip().toUpperCase(Locale.ROOT);
        int[] next = new int[2];
        for (int i = 0; i < letters.length(); i++) {
            int set = letters.charAt(i) - 'A';
            if (set != 0 && set != 1) {
                throw new CommandException(Exit.WRONG_USE, "--order " + order + ": letters A and B only, as in ABBAAB");
            }
            if (next[set] < times[set].length) {
                times[set][next[set]] = i;
            }
            next[set]++;
        }
        if (next[0] != ofA.size() || next[1] != ofB.size()) {
            throw new CommandException(
                    Exit.WRONG_USE,
                    "--order " + order + " has " + next[0] + " A and " + next[1] + " B; in the logs are " + ofA.size()
                            + " and " + ofB.size() + " throws");
        }
        return times;
    }

    private double[] unknown(List<LoggedLaunch> launches) {
        return launches.stream()
                .mapToDouble(one -> oneClock ? one.launch().release() : Double.NaN)
                .toArray();
    }
}
