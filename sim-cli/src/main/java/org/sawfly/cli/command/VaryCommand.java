package org.sawfly.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.sawfly.cli.answer.Answer;
import org.sawfly.cli.answer.ChangeWords;
import org.sawfly.cli.answer.HowSure;
import org.sawfly.cli.answer.VariedAxis;
import org.sawfly.cli.answer.VaryAnswer;
import org.sawfly.cli.answer.VaryRows;
import org.sawfly.file.FileKind;
import org.sawfly.file.ScenarioFile;
import org.sawfly.file.StudyFile;
import org.sawfly.file.Varied;
import org.sawfly.flight.Scenario;
import org.sawfly.study.Axis;
import org.sawfly.study.Result;
import org.sawfly.study.Scenarios;
import org.sawfly.study.Setting;
import org.sawfly.study.StopWhen;
import org.sawfly.study.Vary;
import org.sawfly.study.Workbench;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One or two quantities over a range. */
@Command(
        name = "vary",
        addMethodSubcommands = false,
        aliases = "sweep",
        mixinStandardHelpOptions = true,
        header = {
            "How far? Launch height, sink and margins over a range of one or two values.",
            "",
            "  sawfly vary shorten-boom.yaml --chart shorten-boom.png",
            "  sawfly vary plover.yaml --vary boom.cut_mm=0..80/10 --keep margin",
            ""
        })
final class VaryCommand implements Callable<Integer> {
    private static final int MOST_AXES = 2;

    /** Rows that have ranges without being asked for. */
    private static final int MOST_RANGED = 25;

    /** Draws for each of them when nobody says how many. */
    private static final int DRAWS = 64;

    @Parameters(index = "0", paramLabel = "FILE", description = "a glider, or a study that varies something")
    private Path file;

    @Option(
            names = "--vary",
            paramLabel = "KEY=FROM..TO/STEP",
            description = "what is varied; also KEY=0,20,40. Twice for a grid")
    private List<String> vary = new ArrayList<>();

    @Option(names = "--resume", description = "go on with the --csv file of a run that was stopped")
    private boolean resume;

    @Mixin
    private StudyOptions options;

    private final Streams streams;

    VaryCommand(Streams streams) {
        this.streams = streams;
    }

    /** What is asked. */
    private record Question(
            String title, ScenarioFile scenarios, List<Varied> varied, StopWhen stopWhen, boolean throwerNamed) {}

    @Override
    public Integer call() {
        options.check();
        RowRun.check(options.output(), resume);
        int threads = options.threads();
        Question question = FileKind.isStudy(file) ? ofStudy() : ofGlider();
        List<Setting> common = options.change().all();
        Scenarios scenarios = settings -> {
            List<Setting> all = new ArrayList<>(common);
            all.addAll(settings);
            return question.scenarios().with(all);
        };
        List<Axis> axes = axes(question);
        tryEnds(scenarios, axes);
        List<VariedAxis> varied = understood(question);
        Workbench bench = new Workbench();
        Vary study = new Vary(bench, scenarios, axes);
        Scenario rule = scenarios.with(
                List.of(Setting.of(axes.get(0).path(), axes.get(0).values().get(0))));
        Result today = bench.answer(scenarios.with(List.of()));
        VaryRows rows = new VaryRows(study.rows());
        boolean slow = DrawOptions.slow(rule) || varied.size() > 1 || study.rows() > MOST_RANGED;
        int count = options.draw().count(slow ? 0 : DRAWS, study.rows());
        HowSure sure = count == 0
                ? null
                : options.draw().draw(bench, question.scenarios(), scenarios, versions(study), count, threads);
        new RowRun(study, rows, sure, options.output(), streams).run(threads, resume);
        VaryAnswer.Asked asked = new VaryAnswer.Asked(question.title(), varied, question.stopWhen(), rule);
        Answer answer = VaryAnswer.of(asked, rows, today, sure);
        if (options.draw().spared(slow)) {
            answer.warn("no ranges 9 times in 10, since they would take long; --draws 32 gives them");
        }
        GliderOptions.tell(question.scenarios(), question.throwerNamed(), answer);
        options.output().deliverWithoutCsvFile(answer, streams);
        return rows.flown() > 0 ? Exit.DONE.code() : Exit.NO_ANSWER.code();
    }

    /** Today and all rows. */
    private static List<List<Setting>> versions(Vary study) {
        List<List<Setting>> versions = new ArrayList<>(List.of(List.of()));
        for (int i = 0; i < study.rows(); i++) {
            versions.add(study.settings(i));
        }
        return versions;
    }

    private Question ofGlider() {
        List<Varied> varied =
                vary.stream().map(one -> Varied.parse(one, "--vary")).toList();
        ScenarioFile scenarios = options.launch().open(file);
        if (vary.isEmpty()) {
            throw new CommandException(
                    Exit.WRONG_USE, "nothing to vary. Maybe --vary boom.cut_mm=0..80/10 --keep margin");
        }
        String what = String.join(
                " and ",
                varied.stream()
                        .map(one -> new VariedAxis(one.path(), one.values(), "", Double.NaN).words())
                        .toList());
        String changed = options.change().changes().isEmpty()
                ? ""
                : ", with " + ChangeWords.of(options.change().changes());
        String title = scenarios.today().name() + ": " + what + changed;
        return new Question(
                title, scenarios, varied, StopWhen.NEVER, options.launch().given());
    }

    private Question ofStudy() {
        StudyFile study = StudyFile.open(file);
        if (study.varied().isEmpty()) {
            throw new CommandException(
                    Exit.WRONG_USE, file + " has versions and varies nothing. Maybe sawfly compare " + file);
        }
        if (options.launch().given() || !vary.isEmpty()) {
            String option = options.launch().given() ? "--launch" : "--vary";
            throw new CommandException(
                    Exit.WRONG_USE, option + ": a study says this itself. Maybe sawfly vary with the glider's file");
        }
        String title = study.scenarios().today().name() + ": " + study.name();
        return new Question(title, study.scenarios(), study.varied(), study.stopWhen(), true);
    }

    private static List<Axis> axes(Question question) {
        if (question.varied().size() > MOST_AXES) {
            throw new CommandException(
                    Exit.WRONG_USE,
                    question.varied().size() + " quantities; at most " + MOST_AXES + " are varied together");
        }
        long paths = question.varied().stream().map(Varied::path).distinct().count();
        if (paths < question.varied().size()) {
            throw new CommandException(
                    Exit.WRONG_USE, question.varied().get(0).path() + " is varied twice; name two quantities");
        }
        List<Axis> axes = question.varied().stream().map(Varied::axis).toList();
        long count = Vary.count(axes);
        if (count > Vary.MOST_ROWS) {
            throw new CommandException(
                    Exit.NOT_ACCEPTED,
                    count + " rows are too many; at most " + Vary.MOST_ROWS + " are accepted. Maybe larger steps");
        }
        return axes;
    }

    /** Reads the scenarios at the ends of the ranges, so that a value that is refused is heard of before any flight. */
    private static void tryEnds(Scenarios scenarios, List<Axis> axes) {
        for (int end = 0; end < 2; end++) {
            List<Setting> settings = new ArrayList<>();
            for (Axis axis : axes) {
                int index = end == 0 ? 0 : axis.values().size() - 1;
                settings.add(Setting.of(axis.path(), axis.values().get(index)));
            }
            scenarios.with(settings);
        }
    }

    private List<VariedAxis> understood(Question question) {
        List<VariedAxis> varied = new ArrayList<>();
        for (Varied one : question.varied()) {
            VariedAxis axis = new VariedAxis(
                    one.path(),
                    one.values(),
                    VariedAxis.understood(one.path(), one.words()),
                    question.scenarios().valueToday(one.path()));
            options.output().note(streams, axis.understood());
            varied.add(axis);
        }
        return varied;
    }
}
