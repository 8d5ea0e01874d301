package org.sawfly.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sawfly.cli.answer.Case;
import org.sawfly.cli.answer.TuneAnswer;
import org.sawfly.file.Between;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.Moment;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Quantity;
import org.sawfly.study.Knob;
import org.sawfly.study.Limit;
import org.sawfly.study.Optimiser;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Scenarios;
import org.sawfly.study.Setting;
import org.sawfly.study.Tune;
import org.sawfly.study.Tuned;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Settings tuned for an aim. */
@Command(
        name = "tune",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "The best launch settings, and how far each may be off before it matters.",
            "",
            "  sawfly tune plover.yaml",
            "  sawfly tune plover.yaml --let ready_to_fly.cg_mm=62..74 --aim time \\",
            "      --limit static_margin_pct=2..",
            ""
        })
final class TuneCommand implements Runnable {
    private static final String PUSH_OVER = "push_over_at_s";
    private static final List<String> USUAL =
            List.of("preset.elevator_up_mm=0..3", "climb_deg=50..88", PUSH_OVER + "=1.2..2.8");
    private static final int FLIGHTS_EACH = 60;
    private static final int THOROUGH = 10;
    private static final int MOST = 8;

    @Option(
            names = "--let",
            paramLabel = "KEY=FROM..TO",
            description =
                    "what may be set, and from where to where; several times. Left out: elevator preset, climb and"
                            + " push-over")
    private List<String> lets = new ArrayList<>();

    @Option(
            names = "--aim",
            paramLabel = "AIM",
            description = "what is to be large: height (settled) or time (circling)")
    private String aim = "height";

    @Option(
            names = "--limit",
            paramLabel = "KEY=FROM..TO",
            description = "what has to be kept, a number of --json; an end may be left out: max_load_g=..12")
    private List<String> limits = new ArrayList<>();

    @Option(names = "--best", description = "also tell the best value of each setting")
    private boolean best;

    @Option(names = "--thorough", description = "look for several hollows; ten times the flights")
    private boolean thorough;

    @Option(names = "--seed", paramLabel = "N", description = "for --thorough: the same number takes the same way")
    private long seed = 1;

    @Mixin
    private Asked asked;

    private final Streams streams;

    TuneCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        Tune.Aim wanted = aim();
        List<Between> ranges = (lets.isEmpty() ? USUAL : lets)
                .stream().map(one -> Between.parse(one, "--let")).toList();
        List<Limit> kept = limits.stream().map(TuneCommand::limit).toList();
        check(ranges);
        Case today = asked.answer(new FlightLog());
        List<Setting> common = asked.settings();
        Scenarios scenarios = asked.file();
        tryEnds(scenarios, common, ranges);
        List<Knob> knobs = ranges.stream().map(one -> knob(asked.file(), one)).toList();
        int flights = FLIGHTS_EACH * knobs.size();
        Optimiser optimiser = thorough ? Optimiser.rugged(THOROUGH * flights, seed) : Optimiser.smooth(flights);
        Tuned tuned = new Tune(asked.bench(), scenarios, common, wanted, kept).run(knobs, optimiser);
        TuneAnswer.Asked question = new TuneAnswer.Asked(wanted, kept, path -> valueToday(path, today), best);
        asked.deliver(TuneAnswer.of(today, question, tuned), streams);
    }

    /** What a key holds today; when the push-over is a word in the file, the moment at which it comes. */
    private double valueToday(String path, Case today) {
        double given = asked.file().valueToday(path);
        if (!Double.isNaN(given) || !path.equals(PUSH_OVER)) {
            return given;
        }
        return today.result().outcome().moments().stream()
                .filter(moment -> moment.kind() == Moment.Kind.PUSH_OVER)
                .mapToDouble(Moment::time)
                .findFirst()
                .orElse(Double.NaN);
    }

    private Tune.Aim aim() {
        return switch (aim.strip().toLowerCase(Locale.ROOT)) {
            case "height" -> new Tune.Aim(ResultQuantities.SETTLED_HEIGHT, 0.2);
            case "time" -> new Tune.Aim(ResultQuantities.STILL_AIR_CIRCLING, 1);
            default -> throw new CommandException(Exit.WRONG_USE, "--aim " + aim + ": choose from height, time");
        };
    }

    private static Limit limit(String written) {
        Between one = Between.parse(written, "--limit");
        Optional<Quantity<Result>> quantity = ResultQuantities.ALL.stream()
                .filter(each -> each.key().equals(one.path()))
                .findFirst();
        if (quantity.isEmpty()) {
            List<String> known =
                    ResultQuantities.ALL.stream().map(Quantity::key).toList();
            String near = Between.nearest(one.path(), known);
            throw new CommandException(
                    Exit.WRONG_USE,
                    "--limit " + one.path() + ": no such number. Maybe "
                            + (near.isEmpty() ? "static_margin_pct, max_load_g or first_swing_deg" : near));
        }
        return new Limit(quantity.get(), new Band(one.from(), one.to()));
    }

    private static void check(List<Between> ranges) {
        if (ranges.size() > MOST) {
            throw new CommandException(
                    Exit.WRONG_USE, ranges.size() + " settings; at most " + MOST + " are tuned together");
        }
        for (Between one : ranges) {
            if (Double.isInfinite(one.to() - one.from())) {
                throw new CommandException(
                        Exit.WRONG_USE,
                        "--let " + one.path() + ": both ends are needed. Maybe --let preset.elevator_up_mm=0..3");
            }
            if (ranges.stream().filter(each -> each.path().equals(one.path())).count() > 1) {
                throw new CommandException(Exit.WRONG_USE, "--let " + one.path() + " is there twice");
            }
        }
    }

    /** Reads the scenarios at the ends, so that a value that is refused is heard of before any search. */
    private static void tryEnds(Scenarios scenarios, List<Setting> common, List<Between> ranges) {
        for (boolean low : new boolean[] {true, false}) {
            List<Setting> settings = new ArrayList<>(common);
            ranges.forEach(one -> settings.add(Setting.of(one.path(), low ? one.from() : one.to())));
            scenarios.with(settings);
        }
    }

    private static Knob knob(ScenarioFile file, Between range) {
        double today = file.valueToday(range.path());
        double start = Double.isNaN(today) ? 0.5 * (range.from() + range.to()) : today;
        return new Knob(
                range.path(),
                TuneAnswer.words(range.path()),
                Math.max(range.from(), Math.min(range.to(), start)),
                range.from(),
                range.to());
    }
}
