package org.sawfly.cli.command;

import java.nio.file.Path;
import java.util.Map;
import org.sawfly.cli.answer.Answer;
import org.sawfly.cli.answer.Case;
import org.sawfly.cli.answer.FlyAnswer;
import org.sawfly.cli.answer.FlyFigures;
import org.sawfly.cli.answer.SidewaysFigure;
import org.sawfly.cli.chart.Charts;
import org.sawfly.cli.chart.Figure;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.FlightPlan;
import org.sawfly.study.Relief;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One throw. */
@Command(
        name = "fly",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "One throw, from the hand to the settled glide; where the height went.",
            "",
            "  sawfly fly plover.yaml --chart flight.png",
            "  sawfly fly plover.yaml --launch strong.yaml --chart-swing swing.png",
            "  sawfly fly plover.yaml --axes all --model strip --chart-side side.png",
            ""
        })
final class FlyCommand implements Runnable {
    @Mixin
    private Asked asked;

    @Option(
            names = "--chart-swing",
            paramLabel = "FILE",
            description = "a chart of the first half second, to be held against a film; .png or .svg")
    private Path swing;

    @Option(
            names = "--chart-side",
            paramLabel = "FILE",
            description = "a chart of the launch from behind, with roll and heading; .png or .svg")
    private Path side;

    private final Streams streams;

    FlyCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        OutputOptions output = asked.output();
        if (swing != null) {
            kind(swing);
            output.willWrite(swing);
        }
        if (side != null) {
            kind(side);
            output.willWrite(side);
        }
        FlightLog log = new FlightLog();
        Case answered = asked.answer(log);
        boolean top = answered.result().outcome().ledger() != null;
        Map<Relief.Of, Double> gains =
                top ? Relief.gains(asked.bench(), answered.scenario(), answered.result()) : Map.of();
        Answer answer = FlyAnswer.of(answered, gains);
        if (output.csvFile() != null || output.csvOnStandardOutput()) {
            FlightPlan plan = answered.result().plan();
            answer.rows(FlyAnswer.rows(log, plan.craft().deflections().elevatorChord()));
        }
        if (output.wantsChart()) {
            answer.figure(FlyFigures.path(answered, log));
        }
        if (swing != null) {
            draw(swing, FlyFigures.swing(answered, log, harder(answered.result().plan())));
        }
        if (side != null) {
            draw(side, SidewaysFigure.of(answered, log));
        }
        asked.deliver(answer, streams);
    }

    private static FlightLog harder(FlightPlan plan) {
        FlightLog log = new FlightLog();
        Flight.fly(plan.withRelease(plan.releaseSpeed(), FlyFigures.HARDER * plan.yawRate()), log);
        return log;
    }

    private void draw(Path path, Figure figure) {
        Charts.Kind kind = kind(path);
        asked.output().files().write(path, out -> Charts.write(figure, kind, out));
        asked.output().note(streams, "Wrote " + path);
    }

    private static Charts.Kind kind(Path path) {
        try {
            return Charts.kindOf(path.toString());
        } catch (IllegalArgumentException e) {
            throw new CommandException(Exit.WRONG_USE, e.getMessage());
        }
    }
}
