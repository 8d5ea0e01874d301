package org.sawfly.cli.command;

import java.util.List;
import org.sawfly.aero.ModelChoice;
import org.sawfly.cli.answer.HowSure;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.PresetRule;
import org.sawfly.flight.PushRule;
import org.sawfly.flight.Scenario;
import org.sawfly.study.Draws;
import org.sawfly.study.PairedDraws;
import org.sawfly.study.Scenarios;
import org.sawfly.study.Setting;
import org.sawfly.study.Workbench;
import picocli.CommandLine.Option;

/** How many draws give the ranges, and which. */
final class DrawOptions {
    private static final int LEAST = 20;
    private static final int MOST = 20_000;
    private static final int MOST_FLIGHTS = 200_000;

    @Option(
            names = "--draws",
            paramLabel = "N",
            description = "how often everything uncertain is drawn anew for the ranges 9 times in 10; 0 for no ranges")
    private Integer draws;

    @Option(names = "--seed", paramLabel = "N", description = "another number gives other draws; 1 if left out")
    private long seed = 1;

    /** Refuses a number of draws that is none. */
    void check() {
        if (draws != null && draws != 0 && (draws < LEAST || draws > MOST)) {
            throw new CommandException(
                    Exit.WRONG_USE,
                    "--draws " + draws + ": 0 for no ranges, or a number from " + LEAST + " to " + MOST + " is needed");
        }
    }

    /**
     * How many draws.
     *
     * @param usual when nobody asked; 0 for none
     * @param versions that are drawn
     */
    int count(int usual, int versions) {
        int count = draws == null ? usual : draws;
        long flights = (long) count * versions;
        if (flights > MOST_FLIGHTS) {
            throw new CommandException(
                    Exit.NOT_ACCEPTED,
                    count + " draws of " + versions + " rows are " + flights + " flights; at most " + MOST_FLIGHTS
                            + " are accepted. Maybe larger steps, or --draws 0");
        }
        return count;
    }

    /** Whether ranges are left out because nobody asked and they would take long. */
    boolean spared(boolean slow) {
        return slow && draws == null;
    }

    /** Whether one flight of a scenario takes long. */
    static boolean slow(Scenario scenario) {
        return scenario.flying().model() == ModelChoice.STRIP
                || scenario.presetRule() == PresetRule.BEST_FOR_EACH
                || scenario.flying().push() == PushRule.BEST;
    }

    /**
     * Draws today and its versions.
     *
     * @param bench whose tables are used
     * @param file that says how uncertain the inputs are
     * @param scenarios makes the scenarios
     * @param versions settings of each, today first
     * @param count of draws
     * @param threads how many
     */
    HowSure draw(
            Workbench bench,
            ScenarioFile file,
            Scenarios scenarios,
            List<List<Setting>> versions,
            int count,
            int threads) {
        List<Setting> version = versions.get(versions.size() - 1);
        Draws drawn = new Draws(file.uncertainties(version), count, seed);
        PairedDraws paired = PairedDraws.run(
                bench, scenarios, versions, HowSure.TOLD, drawn, file.seen(version), threads, () -> false);
        return new HowSure(paired, seed);
    }
}
