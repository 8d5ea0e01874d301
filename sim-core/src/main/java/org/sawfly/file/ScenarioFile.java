package org.sawfly.file;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.sawfly.flight.Scenario;
import org.sawfly.flight.Sighting;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Scattered;
import org.sawfly.study.Scenarios;
import org.sawfly.study.SeenInFlight;
import org.sawfly.study.Setting;
import org.sawfly.study.Uncertain;
import org.sawfly.study.Uncertainties;

/**
 * A glider file and a launch file, read once, from which scenarios are made: each by laying its settings over the trees
 * and reading them again, with what weighing and balancing found of today's glider held. Immutable; for any thread.
 */
public final class ScenarioFile implements Scenarios {
    private static final String PEG = "peg_tip";
    /** What the thrower is called who stands in where no launch is named. */
    public static final String DEMO_THROWER = "the demo thrower";

    /** The demo thrower: the climb of the club's, and for all else what is assumed of a thrower. */
    private static final String DEMO_LAUNCH = "launch: club\nclimb_deg: 68\n";

    private final Node.Keys glider;
    private final Node.Keys launch;
    private final Change change;
    private final Sources sources;
    private final GliderReader.Read today;
    private final Sighting sighting;

    /** What all scenarios of a file share. */
    private record Sources(
            TableFiles tables, GliderReader.CruiseDecalage cruise, List<Assumed> assumed, List<Problem> doubts) {}

    private ScenarioFile(
            Node.Keys glider,
            Node.Keys launch,
            Change change,
            Sources sources,
            GliderReader.Read today,
            Sighting sighting) {
        this.glider = glider;
        this.launch = launch;
        this.change = change;
        this.sources = sources;
        this.today = today;
        this.sighting = sighting;
    }

    /**
     * Reads a glider with its launch.
     *
     * @param glider file
     * @param launch file; null for the demo thrower, nearly all of whose numbers are listed as assumed
     * @throws InputException with everything that is wrong in either
     */
    public static ScenarioFile open(Path glider, Path launch) {
        Reading reading = new Reading();
        Documents documents = new Documents(reading.problems());
        Documents.Document gliderFile = documents.of(Documents.Kind.GLIDER, glider);
        Documents.Document launchFile = launch == null ? null : documents.of(Documents.Kind.LAUNCH, launch);
        ScenarioFile file = open(documents, reading, gliderFile, launchFile);
        reading.problems().throwIfAny();
        return file;
    }

    /** Reads both, with problems where others collect them; null when the glider could not be read at all. */
    static ScenarioFile open(
            Documents documents, Reading reading, Documents.Document gliderFile, Documents.Document launchFile) {
        TableFiles tables = new TableFiles();
        GliderReader.CruiseDecalage cruise = new TrimmedDecalage();
        Node.Keys launchTree = launchFile == null
                ? heldAtThePeg(
                        (Node.Keys) TreeReader.read(Source.of(DEMO_THROWER, DEMO_LAUNCH), reading.problems()),
                        gliderFile)
                : launchFile.tree();
        LaunchReader.Read launch = In.read(launchTree, reading, LaunchReader::read);
        if (gliderFile == null) {
            return null;
        }
        Hand hand = launch.launch().thrower().hand();
        GliderReader.Read today =
                In.read(withPeg(gliderFile.tree(), hand), reading, new GliderReader(tables, cruise)::read);
        Glider seenWith = today.glider();
        if (launch.calibratedWith() != null && launchFile != null) {
            Documents.Document other = documents.referred(
                    Documents.Kind.GLIDER, launchFile.path(), launch.calibratedWith(), launch.in(), "calibrated_with");
            if (other != null && other != gliderFile) {
                seenWith = In.read(
                                withPeg(other.tree(), hand),
                                new Reading(reading.problems()),
                                new GliderReader(tables, cruise)::read)
                        .glider();
            }
        }
        checkHand(launch, today.glider(), reading.problems());
        Change none = Change.none(gliderFile.tree().place());
        List<Problem> doubts = reading.problems().doubts();
        Sources sources = new Sources(tables, cruise, reading.assumed(), doubts);
        return new ScenarioFile(
                gliderFile.tree(), launchTree, none, sources, today, Sighting.of(seenWith, launch.launch()));
    }

    /** The same files with a change that all scenarios have. */
    ScenarioFile changed(Change more) {
        return new ScenarioFile(glider, launch, change.and(more), sources, today, sighting);
    }

    /**
     * The same files with another number in place of an assumed one; the throw is the one worked out before.
     *
     * @param value in the unit of the key
     * @throws InputException when the files do not take it
     */
    ScenarioFile assuming(String path, double value) {
        Reading reading = new Reading();
        Place place = Place.whole(path);
        Node.Keys one = Edit.single(
                path, new Node.Scalar(place, Node.Kind.NUMBER, Numbers.machine(value)), place, reading.problems());
        Change sorted = Change.sorted(one);
        Node.Keys thrown = Edit.over(launch, sorted.launch());
        Node.Keys tree = Edit.over(glider, sorted.glider());
        Hand hand =
                In.read(thrown, reading, LaunchReader::read).launch().thrower().hand();
        GliderReader.Read read =
                In.read(withPeg(tree, hand), reading, new GliderReader(sources.tables, sources.cruise)::read);
        reading.problems().throwIfAny();
        return new ScenarioFile(tree, thrown, change.and(sorted), sources, read, sighting);
    }

    @Override
    public Scenario with(List<Setting> settings) {
        Reading reading = new Reading();
        Change all = change;
        for (Setting setting : settings) {
            Change more = Settings.change(setting, reading.problems());
            all = more == null ? all : all.and(more);
        }
        Scenario scenario = read(all, reading);
        reading.problems().throwIfAny();
        return scenario;
    }

    /** Reads a scenario only to hear what is wrong with it. */
    void tryOut(List<Setting> settings, Problems problems) {
        Change all = change;
        for (Setting setting : settings) {
            Change more = Settings.change(setting, problems);
            all = more == null ? all : all.and(more);
        }
        read(all, new Reading(problems));
    }

    /** The scenario of a change, as best it can be read. */
    Scenario read(Change all, Reading reading) {
        refuseWeight(all, reading.problems());
        Designs designs = In.read(all.design(), reading, Designs::read);
        Options options = In.read(all.options(), reading, Options::read);
        LaunchReader.Read throwing = In.read(Edit.over(launch, all.launch()), reading, LaunchReader::read);
        GliderReader reader = new GliderReader(sources.tables, sources.cruise, today.held());
        GliderReader.Read[] read = new GliderReader.Read[1];
        Node.Keys tree = withPeg(
                Edit.over(glider, all.glider()), throwing.launch().thrower().hand());
        Glider changed = In.read(tree, reading, in -> {
            read[0] = reader.read(in);
            Glider made = designs.apply(read[0].glider(), today.glider(), in, options.cut());
            Overlap.check(in, made);
            return made;
        });
        checkHand(throwing, changed, reading.problems());
        double wanted = designs.cg();
        RebalanceRule rule =
                new RebalanceRule(designs.keep(options.keep(), reading.problems()), options.with(), wanted);
        return new Scenario(
                changed,
                today.glider(),
                sighting.with(throwing.launch().thrower(), throwing.launch().doubts()),
                rule,
                throwing.launch(),
                read[0].settings(),
                options.preset(),
                read[0].corrections(),
                options.flying());
    }

    /**
     * A version as a glider file of its own that reads back to the same numbers.
     *
     * @param settings that made it
     * @param version after rebalancing
     * @param name what it is to be called
     * @param target where it is going to be
     */
    public String written(List<Setting> settings, Glider version, String name, Path target) {
        return GliderWriter.write(
                version, name, Edit.over(glider, change(settings).glider()), target);
    }

    private Change change(List<Setting> settings) {
        Change all = change;
        for (Setting setting : settings) {
            all = all.and(Settings.change(setting, new Problems()));
        }
        return all;
    }

    /**
     * The launch with other values as a file of its own.
     *
     * @param settings of the launch
     * @param name what it is to be called
     */
    public String writtenLaunch(List<Setting> settings, String name) {
        return LaunchWriter.write(Edit.over(launch, change(settings).launch()), name);
    }

    /** What stands at a path today or is assumed for it, as a number in the unit of the key; NaN for nothing of the kind. */
    public double valueToday(String path) {
        return switch (path) {
            case "boom.cut_mm" -> 0;
            case "tailplane.scale_area", "fin.scale_area" -> 1;
            case "ready_to_fly.cg_mm" ->
                Unit.MILLIMETRE.fromSi(-MassProperties.of(today.glider()).cg().x());
            default -> {
                double inGlider = numberAt(glider, path);
                double given = Double.isNaN(inGlider) ? numberAt(launch, path) : inGlider;
                yield Double.isNaN(given) ? assumedAt(path) : given;
            }
        };
    }

    private double assumedAt(String path) {
        return sources.assumed().stream()
                .filter(one -> one.path().equals(path))
                .mapToDouble(Assumed::value)
                .findFirst()
                .orElse(Double.NaN);
    }

    private static double numberAt(Node.Keys tree, String path) {
        Node node = tree;
        for (String key : path.split("\\.", -1)) {
            node = node instanceof Node.Keys keys ? keys.get(key) : null;
        }
        return node instanceof Node.Scalar scalar ? NumberText.parse(scalar) : Double.NaN;
    }

    /** The glider as it is today. */
    public Glider today() {
        return today.glider();
    }

    /** Weight on the scale as it leaves the hand [kg]; NaN when not given. */
    public double weighedMass() {
        return today.balance().mass();
    }

    /** Balance point as measured, forward positive [m]; NaN when not given. */
    public double weighedCgX() {
        return today.balance().cgX();
    }

    /** How uncertain the inputs are; what all scenarios have changed is in it. */
    public Uncertainties uncertainties() {
        return uncertainties(List.of());
    }

    /** How uncertain the inputs are with some settings. */
    public Uncertainties uncertainties(List<Setting> settings) {
        Change with = change(settings);
        Map<Uncertain, Double> all = new EnumMap<>(Uncertain.class);
        all.putAll(In.read(Edit.over(glider, with.glider()), new Reading(), UncertaintyReader::model));
        all.putAll(In.read(Edit.over(launch, with.launch()), new Reading(), UncertaintyReader::ofThrow));
        return new Uncertainties(all);
    }

    /** How much throws differ with some settings: standard deviations; NaN for a speed that nobody gave [SI]. */
    public Map<Scattered, Double> throwScatter(List<Setting> settings) {
        return In.read(Edit.over(launch, change(settings).launch()), new Reading(), ScatterReader::read);
    }

    /** What was seen in flight, with some settings; the elevator only where the decalage was measured. */
    public SeenInFlight seen(List<Setting> settings) {
        Node.Keys tree = Edit.over(glider, change(settings).glider());
        SeenInFlight seen = In.read(tree, new Reading(), SeenReader::read);
        return Double.isNaN(numberAt(tree, "tailplane.decalage_deg")) ? seen.withoutElevator() : seen;
    }

    /** What nobody gave and what stands in for it. */
    public List<Assumed> assumed() {
        return sources.assumed;
    }

    /** What is unusual and accepted. */
    public List<Problem> doubts() {
        return sources.doubts;
    }

    /** The launch of a thrower who is not the glider's own: he throws with the hand that the peg asks for. */
    private static Node.Keys heldAtThePeg(Node.Keys launch, Documents.Document gliderFile) {
        boolean right = gliderFile != null
                && gliderFile.tree().get("wing") instanceof Node.Keys wing
                && wing.get(PEG) instanceof Node.Scalar peg
                && peg.text().equals("right");
        Place place = launch.place();
        Node left = new Node.Scalar(place, Node.Kind.TEXT, "left");
        return right ? Edit.over(launch, Edit.single("thrower.hand", left, place, new Problems())) : launch;
    }

    /** A glider whose file does not say where the peg is has it where the thrower holds it. */
    private static Node.Keys withPeg(Node.Keys glider, Hand hand) {
        boolean said = glider.get("wing") instanceof Node.Keys wing && wing.get(PEG) != null;
        if (said || hand == Hand.RIGHT || !(glider.get("wing") instanceof Node.Keys)) {
            return glider;
        }
        Node right = new Node.Scalar(glider.place(), Node.Kind.TEXT, "right");
        return Edit.over(glider, Edit.single("wing." + PEG, right, glider.place(), new Problems()));
    }

    private static void refuseWeight(Change all, Problems problems) {
        if (all.glider().get("ready_to_fly") instanceof Node.Keys ready && ready.get("mass_g") != null) {
            problems.add(
                    ready.entries().get("mass_g").place(),
                    "ready_to_fly.mass_g",
                    "cannot be changed: what a version weighs follows from its parts",
                    "parts.ballast: {mass_g: 20, behind_mm: 69}");
        }
    }

    private static void checkHand(LaunchReader.Read launch, Glider glider, Problems problems) {
        if (launch.launch().thrower().hand() != glider.wing().peg()) {
            String hand = Texts.word(launch.launch().thrower().hand());
            String peg = hand.equals("right") ? "left" : "right";
            problems.add(
                    launch.in().place("hand"),
                    "thrower.hand",
                    "a " + hand + "-hander holds the " + peg + " tip; the peg of " + glider.name()
                            + " is at the other one",
                    "wing.peg_tip: " + peg + " in the glider's file");
        }
    }
}
