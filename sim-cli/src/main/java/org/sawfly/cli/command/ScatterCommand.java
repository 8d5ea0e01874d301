package org.sawfly.cli.command;

import java.util.List;
import java.util.Map;
import org.sawfly.cli.answer.Case;
import org.sawfly.cli.answer.ScatterAnswer;
import org.sawfly.study.Scattered;
import org.sawfly.study.Setting;
import org.sawfly.study.Throws;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Throw-to-throw scatter. */
@Command(
        name = "scatter",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "How much your throws differ, and how many of them would show a change.",
            "",
            "  sawfly scatter plover.yaml --launch club.yaml --chart scatter.png",
            "  sawfly scatter plover.yaml --change ready_to_fly.cg_mm=66",
            ""
        })
final class ScatterCommand implements Runnable {
    private static final int LEAST = 20;
    private static final int MOST = 20_000;

    @Mixin
    private Asked asked;

    @Option(names = "--throws", paramLabel = "N", description = "how many throws of each; 256 if left out")
    private int count = Throws.USUAL_COUNT;

    @Option(names = "--seed", paramLabel = "N", description = "another number gives other throws; 1 if left out")
    private long seed = 1;

    @Mixin
    private RunOptions run;

    private final Streams streams;

    ScatterCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        int threads = run.threads();
        if (count < LEAST || count > MOST) {
            throw new CommandException(
                    Exit.WRONG_USE, "--throws " + count + ": a number from " + LEAST + " to " + MOST + " is needed");
        }
        Case version = asked.answer(null);
        List<Setting> rules = asked.rules();
        Case today = version.changes().isEmpty()
                ? version
                : new Case(
                        List.of(),
                        asked.file().with(rules),
                        asked.bench().answer(asked.file().with(rules)));
        Map<Scattered, Double> deviations = asked.file().throwScatter(version.changes());
        Throws.Drawn drawn = new Throws.Drawn(count, seed, threads);
        Throws now = Throws.of(today.result(), deviations, drawn);
        Throws then = version == today ? null : Throws.of(version.result(), now.deviations(), drawn);
        boolean given = !Double.isNaN(deviations.get(Scattered.SPEED));
        asked.deliver(ScatterAnswer.of(new ScatterAnswer.Asked(today, version, seed, given), now, then), streams);
    }
}
