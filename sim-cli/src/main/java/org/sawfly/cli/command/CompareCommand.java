package org.sawfly.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.sawfly.aero.ModelChoice;
import org.sawfly.cli.answer.Answer;
import org.sawfly.cli.answer.ChangeWords;
import org.sawfly.cli.answer.CompareAnswer;
import org.sawfly.cli.answer.CompareFigure;
import org.sawfly.cli.answer.HowSure;
import org.sawfly.cli.answer.ModelsAnswer;
import org.sawfly.cli.answer.SheetAnswer;
import org.sawfly.cli.answer.Version;
import org.sawfly.file.FileKind;
import org.sawfly.file.ScenarioFile;
import org.sawfly.file.StudyFile;
import org.sawfly.flight.Craft;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.GlidePolar;
import org.sawfly.flight.Scenario;
import org.sawfly.strength.ControlLoads;
import org.sawfly.study.Answered;
import org.sawfly.study.BoomLook;
import org.sawfly.study.Compare;
import org.sawfly.study.Draws;
import org.sawfly.study.NoAnswerException;
import org.sawfly.study.Result;
import org.sawfly.study.Setting;
import org.sawfly.study.TryFirst;
import org.sawfly.study.Workbench;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Today's glider beside changed ones. */
@Command(
        name = "compare",
        addMethodSubcommands = false,
        mixinStandardHelpOptions = true,
        header = {
            "Today beside changed versions: balance, margins, launch, sink, what you feel.",
            "",
            "  sawfly compare plover.yaml --change boom.cut_mm=40 --keep margin",
            "  sawfly compare two-tails.yaml --json",
            "  sawfly compare plover.yaml --change fin.scale_area=1.25 --model both",
            ""
        })
final class CompareCommand implements Callable<Integer> {
    private static final String TODAY = "today";
    private static final int MOST_VERSIONS = 4;

    @Parameters(index = "0", paramLabel = "FILE", description = "a glider, or a study with versions")
    private Path file;

    @Option(
            names = "--write",
            paramLabel = "VERSION FILE",
            arity = "2",
            description = "write a version, changed and rebalanced, as a glider file")
    private String[] write;

    @Option(names = "--sheet", description = "a sheet for the bench in place of the table, for one version")
    private boolean sheet;

    @Mixin
    private StudyOptions options;

    private final Streams streams;

    CompareCommand(Streams streams) {
        this.streams = streams;
    }

    /** What is asked: the files and the settings of each version, all on top of what they have in common. */
    private record Question(
            String title, ScenarioFile scenarios, Map<String, List<Setting>> versions, boolean throwerNamed) {}

    /** By both models: the glider as it is, or one change of it. */
    private Integer byBothModels() {
        if (FileKind.isStudy(file)
                || options.change().keeps().size() > 1
                || write != null
                || options.output().wantsChart()) {
            throw new CommandException(
                    Exit.WRONG_USE,
                    "--model both takes a glider and at most one change and one --keep, and draws no chart."
                            + " Maybe --model strip");
        }
        ScenarioFile scenarios = options.launch().open(file);
        List<Setting> changed = options.change().changes();
        Workbench bench = new Workbench();
        Map<ModelChoice, ModelsAnswer.Pair> pairs = new EnumMap<>(ModelChoice.class);
        for (ModelChoice model : ModelChoice.values()) {
            List<Setting> rules = options.change().rules(model.name().toLowerCase(Locale.ROOT));
            List<Setting> version = new ArrayList<>(changed);
            options.change().keeps().forEach(keep -> version.add(ChangeOptions.keep(keep)));
            version.addAll(rules);
            Result today = bench.answer(scenarios.with(rules));
            Result then = changed.isEmpty() ? today : bench.answer(scenarios.with(version));
            pairs.put(model, new ModelsAnswer.Pair(today, then));
        }
        String what = changed.isEmpty() ? "" : ", and with " + ChangeWords.of(changed);
        String title = scenarios.today().name() + " by both models: as it is" + what;
        Answer answer = ModelsAnswer.of(title, changed, pairs);
        GliderOptions.tell(scenarios, options.launch().given(), answer);
        options.output().deliver(answer, streams);
        return Exit.DONE.code();
    }

    @Override
    public Integer call() {
        options.check();
        int threads = options.threads();
        if (options.change().bothModels()) {
            return byBothModels();
        }
        if (write != null) {
            options.output().willWrite(Path.of(write[1]));
        }
        Question question = FileKind.isStudy(file) ? ofStudy() : ofGlider();
        String written =
                write == null ? "" : written(List.copyOf(question.versions().keySet()));
        Workbench bench = new Workbench();
        Map<String, List<Setting>> all = new LinkedHashMap<>();
        all.put(TODAY, options.change().rules());
        all.putAll(question.versions());
        Map<String, Answered> answers = Compare.run(bench, question.scenarios(), all);
        Answered today = answers.get(TODAY);
        if (today.result() == null) {
            throw new CommandException(Exit.NO_ANSWER, "the glider as it is today: " + today.reason());
        }
        List<Version> versions = new ArrayList<>();
        Scenario first = null;
        for (Map.Entry<String, List<Setting>> one : question.versions().entrySet()) {
            Scenario scenario = question.scenarios().with(one.getValue());
            first = first == null ? scenario : first;
            Optional<TryFirst> tryFirst =
                    versions.isEmpty() && cutsOrGlues(one.getValue()) ? TryFirst.of(bench, scenario) : Optional.empty();
            versions.add(new Version(
                    one.getKey(),
                    changesOf(one.getValue()),
                    scenario.rebalance(),
                    answers.get(one.getKey()),
                    tryFirst));
        }
        Answer answer = sheet
                ? sheet(today.result(), versions)
                : CompareAnswer.of(
                        new CompareAnswer.Asked(question.title(), first),
                        today.result(),
                        versions,
                        booms(today, versions),
                        sure(bench, question, first, all, threads));
        if (!sheet && options.draw().spared(DrawOptions.slow(first))) {
            answer.warn("no ranges 9 times in 10, since such flights take long; --draws 32 gives them");
        }
        GliderOptions.tell(question.scenarios(), question.throwerNamed(), answer);
        if (options.output().wantsChart()) {
            draw(bench, question, today.result(), answer);
        }
        if (write != null) {
            for (Version version : versions) {
                if (version.label().equals(written)) {
                    write(version, question);
                }
            }
        }
        options.output().deliver(answer, streams);
        boolean any = versions.stream().anyMatch(version -> version.answered().result() != null);
        return any ? Exit.DONE.code() : Exit.NO_ANSWER.code();
    }

    /** The ranges; null for none. */
    private HowSure sure(
            Workbench bench, Question question, Scenario first, Map<String, List<Setting>> all, int threads) {
        int count = options.draw().count(DrawOptions.slow(first) ? 0 : Draws.USUAL_COUNT, all.size());
        return count == 0
                ? null
                : options.draw()
                        .draw(
                                bench,
                                question.scenarios(),
                                question.scenarios(),
                                List.copyOf(all.values()),
                                count,
                                threads);
    }

    /** A closer look at all booms where one is mended or replaced; a cut alone leaves the strength nearly as it is. */
    private static Map<String, BoomLook> booms(Answered today, List<Version> versions) {
        Map<String, BoomLook> booms = new LinkedHashMap<>();
        boolean mended = versions.stream()
                .flatMap(version -> version.changes().stream())
                .anyMatch(setting ->
                        setting.path().startsWith("boom.") && !setting.path().equals(ChangeWords.CUT));
        if (mended) {
            booms.put(TODAY, BoomLook.of(today.result()));
            for (Version version : versions) {
                if (version.answered().result() != null) {
                    booms.put(version.label(), BoomLook.of(version.answered().result()));
                }
            }
        }
        return booms;
    }

    private static Answer sheet(Result today, List<Version> versions) {
        if (versions.size() > 1) {
            throw new CommandException(
                    Exit.WRONG_USE,
                    "--sheet is for one version, and there are " + versions.size() + ". Maybe --change and one --keep");
        }
        Result result = versions.get(0).answered().result();
        if (result == null) {
            throw new CommandException(
                    Exit.NO_ANSWER,
                    versions.get(0).label() + ": " + versions.get(0).answered().reason());
        }
        Craft craft = result.plan().craft();
        GlidePolar.Curve cruise = result.polar().settings().get("cruise");
        double fastest = cruise == null
                ? craft.cruise().speed()
                : cruise.points().get(cruise.points().size() - 1).speed();
        SheetAnswer.Controls controls = new SheetAnswer.Controls(
                ControlLoads.atRelease(result.plan()),
                ControlLoads.gliding(craft, result.plan().launch().weather().ground(), fastest));
        return SheetAnswer.of(today, versions.get(0), BoomLook.of(today), controls);
    }

    private Question ofGlider() {
        List<Setting> changed = options.change().changes();
        ScenarioFile scenarios = options.launch().open(file);
        if (changed.isEmpty()) {
            throw new CommandException(
                    Exit.WRONG_USE, "nothing to compare with. Maybe --change boom.cut_mm=40 --keep margin");
        }
        List<String> keeps = options.change().keeps();
        Map<String, List<Setting>> versions = new LinkedHashMap<>();
        if (keeps.size() < 2) {
            versions.put(ChangeWords.label(changed), settings(changed, keeps));
        }
        for (int i = 0; i < keeps.size() && keeps.size() > 1; i++) {
            versions.put("keep " + keeps.get(i), settings(changed, keeps.subList(i, i + 1)));
        }
        String title = scenarios.today().name() + ": today, and with " + ChangeWords.of(changed);
        return new Question(title, scenarios, versions, options.launch().given());
    }

    private List<Setting> settings(List<Setting> changed, List<String> keeps) {
        List<Setting> all = new ArrayList<>(changed);
        keeps.forEach(keep -> all.add(ChangeOptions.keep(keep)));
        all.addAll(options.change().rules());
        return all;
    }

    private Question ofStudy() {
        StudyFile study = StudyFile.open(file);
        if (study.versions().isEmpty()) {
            throw new CommandException(
                    Exit.WRONG_USE, file + " varies a quantity and has no versions. Maybe sawfly vary " + file);
        }
        if (options.launch().given()) {
            throw new CommandException(Exit.WRONG_USE, "--launch: a study names its launch itself");
        }
        if (study.versions().size() > MOST_VERSIONS) {
            throw new CommandException(
                    Exit.NOT_ACCEPTED,
                    file + ": " + study.versions().size() + " versions do not fit side by side; at most "
                            + MOST_VERSIONS);
        }
        Map<String, List<Setting>> versions = new LinkedHashMap<>();
        study.versions().forEach((name, settings) -> {
            List<Setting> all = new ArrayList<>(settings);
            all.addAll(options.change().all());
            String label = name.toLowerCase(Locale.ROOT).equals(TODAY) ? "version " + name : name;
            versions.put(label, all);
        });
        String title = study.scenarios().today().name() + ": " + study.name();
        return new Question(title, study.scenarios(), versions, true);
    }

    /** What is changed, without the rules. */
    private static List<Setting> changesOf(List<Setting> settings) {
        return settings.stream()
                .filter(setting -> !setting.path().startsWith("rebalance")
                        && !setting.path().equals("preset")
                        && !setting.path().equals("axes")
                        && !setting.path().equals("model")
                        && !setting.path().startsWith("pilot"))
                .toList();
    }

    /** Whether boom or tailplane is another afterwards: what one would like a foretaste of. */
    private static boolean cutsOrGlues(List<Setting> settings) {
        return settings.stream().anyMatch(setting -> setting.path().matches("(boom|tailplane)\\b.*"));
    }

    private void draw(Workbench bench, Question question, Result today, Answer answer) {
        CompareFigure figure = new CompareFigure(today);
        Map<String, List<Setting>> all = new LinkedHashMap<>();
        all.put(TODAY, options.change().rules());
        all.putAll(question.versions());
        all.forEach((name, settings) -> {
            try {
                FlightLog log = new FlightLog();
                bench.answer(question.scenarios().with(settings), log);
                figure.add(name, log);
            } catch (NoAnswerException e) {
                answer.warn(name + " is not drawn: " + e.getMessage());
            }
        });
        answer.figure(figure.figure(question.title()));
    }

    /** The label of the version that is to be written. */
    private String written(List<String> labels) {
        if (labels.size() == 1 && write[0].equals("version")) {
            return labels.get(0);
        }
        if (!labels.contains(write[0])) {
            throw new CommandException(
                    Exit.WRONG_USE,
                    "--write: there is no version \"" + write[0] + "\". Maybe " + String.join(", ", labels));
        }
        return write[0];
    }

    private void write(Version version, Question question) {
        Result result = version.answered().result();
        if (result == null) {
            throw new CommandException(
                    Exit.NO_ANSWER, version.label() + ": " + version.answered().reason());
        }
        Path target = Path.of(write[1]);
        List<Setting> settings = question.versions().get(version.label());
        String name = question.scenarios().today().name() + ", " + version.label();
        String text =
                question.scenarios().written(settings, result.plan().craft().glider(), name, target);
        options.output().files().write(target, text);
        options.output().note(streams, "Wrote " + target);
    }
}
