package org.sawfly.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.sawfly.cli.answer.Answer;
import org.sawfly.cli.answer.CalibrateAnswer;
import org.sawfly.cli.answer.Case;
import org.sawfly.file.LogFile;
import org.sawfly.flight.NoThrowException;
import org.sawfly.motion.NoTrimException;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Setting;
import org.sawfly.study.Uncertain;
import org.sawfly.study.Uncertainties;
import org.sawfly.study.log.Calibrated;
import org.sawfly.study.log.Calibration;
import org.sawfly.study.log.FlightModel;
import org.sawfly.study.log.GlideSink;
import org.sawfly.study.log.HeightLog;
import org.sawfly.study.log.NoFitException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Thrower and drag from logs. */
@Command(
        name = "calibrate",
        addMethodSubcommands = false,
        aliases = "fit",
        mixinStandardHelpOptions = true,
        header = {
            "How fast it leaves your hand and how much drag it has, by the altimeter's logs.",
            "",
            "  sawfly calibrate plover.yaml evening.csv --launch club.yaml --chart rest.png",
            "  sawfly calibrate plover.yaml evening.csv --write plover-evening",
            ""
        })
final class CalibrateCommand implements Runnable {
    /** Files take no wider range than this many usual ones. */
    private static final int MOST_UNCERTAIN = 3;

    @Mixin
    private Asked asked;

    @Parameters(
            index = "1..*",
            paramLabel = "LOG",
            arity = "1..*",
            description = "logs of the glider as it is: CSV with time_s and height_m")
    private List<Path> paths;

    @Option(
            names = "--write",
            paramLabel = "NAME",
            description = "write NAME-glider.yaml and NAME-launch.yaml with what was found, for other commands")
    private Path write;

    private final Streams streams;

    CalibrateCommand(Streams streams) {
        this.streams = streams;
    }

    @Override
    public void run() {
        if (write != null) {
            asked.output().willWrite(named("-glider.yaml"));
            asked.output().willWrite(named("-launch.yaml"));
        }
        List<HeightLog> logs = LogFile.read(paths);
        Case answered = asked.answer(null);
        Uncertainties uncertainties = asked.file().uncertainties();
        FlightModel model = new FlightModel(asked.bench(), answered.scenario(), answered.result(), uncertainties);
        CalibrateAnswer.Found found = found(model, logs);
        Answer answer = CalibrateAnswer.of(answered, paths, found, uncertainties);
        if (write != null) {
            write(answered, found.fit());
        }
        asked.deliver(answer, streams);
    }

    private static CalibrateAnswer.Found found(FlightModel model, List<HeightLog> logs) {
        try {
            Calibrated fit = new Calibration(model).fit(logs);
            double height = model.height(fit.meanSpeed().value(), fit.drag().value());
            double wagFree = model.wagFreeSpeed(height, fit.drag().value());
            List<GlideSink> sinks = fit.throwsFitted().stream()
                    .map(one -> GlideSink.of(one.logged().log(), one.logged().launch()))
                    .toList();
            return new CalibrateAnswer.Found(fit, height, wagFree, sinks);
        } catch (NoFitException | NoThrowException | NoTrimException e) {
            throw new CommandException(Exit.NO_ANSWER, "no answer: " + e.getMessage());
        }
    }

    private void write(Case answered, Calibrated fit) {
        List<Setting> settings = new ArrayList<>(answered.changes());
        double wing =
                fit.drag().value() * answered.scenario().corrections().drag().wing();
        double tails =
                fit.drag().value() * answered.scenario().corrections().drag().tails();
        Band likely = fit.drag().likely();
        double half = (likely.high() - likely.low()) / (2 * fit.drag().value());
        settings.add(percent("correction.drag_pct", wing));
        settings.add(percent("correction.wing_drag_pct", 1));
        settings.add(percent("correction.tail_drag_pct", tails / wing));
        settings.add(percent("uncertain.drag_pct", Math.min(half, MOST_UNCERTAIN * Uncertain.DRAG.usual())));
        Path glider = named("-glider.yaml");
        String name = asked.file().today().name() + ", as logged";
        String text =
                asked.file().written(settings, answered.result().plan().craft().glider(), name, glider);
        List<Setting> thrown = new ArrayList<>(answered.changes());
        thrown.add(Setting.of(
                "thrower.release_speed_mps", Numbers.rounded(fit.meanSpeed().value(), 2)));
        thrown.add(new Setting("thrower.calibrated_with", "\"" + glider.getFileName() + "\""));
        String launch =
                asked.file().writtenLaunch(thrown, answered.scenario().launch().name() + ", as logged");
        Path thrower = named("-launch.yaml");
        asked.output().files().write(glider, text);
        asked.output().note(streams, "Wrote " + glider);
        asked.output().files().write(thrower, launch);
        asked.output().note(streams, "Wrote " + thrower);
    }

    private static Setting percent(String path, double factor) {
        return Setting.of(path, Numbers.rounded(Unit.PERCENT.fromSi(factor), 1));
    }

    private Path named(String ending) {
        Path name = write.getFileName();
        if (name == null || List.of("", ".", "..").contains(name.toString())) {
            throw new CommandException(
                    Exit.WRONG_USE, "--write \"" + write + "\" is no beginning of a name. Maybe --write evening");
        }
        return write.resolveSibling(name + ending);
    }
}
