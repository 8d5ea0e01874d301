package org.sawfly.study;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.ModelChoice;
import org.sawfly.aero.Models;
import org.sawfly.air.Air;
import org.sawfly.flight.Craft;
import org.sawfly.flight.Deflections;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.GlidePolar;
import org.sawfly.flight.GlideSettings;
import org.sawfly.flight.Launch;
import org.sawfly.flight.NoThrowException;
import org.sawfly.flight.Outcome;
import org.sawfly.flight.PresetRule;
import org.sawfly.flight.PushRule;
import org.sawfly.flight.Scenario;
import org.sawfly.flight.ThrowReference;
import org.sawfly.flight.ThrowSolver;
import org.sawfly.glider.DesignException;
import org.sawfly.glider.Glider;
import org.sawfly.motion.Adaptive;
import org.sawfly.motion.Axes;
import org.sawfly.motion.NoTrimException;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.Margins;
import org.sawfly.stability.Rebalance;
import org.sawfly.stability.Rebalanced;
import org.sawfly.stability.TailVolumes;

/**
 * Takes one scenario from the parts to the answer: rebalance, trim, throw, fly, glide. Keeps what scenarios share (wing
 * tables, today's glider, the thrower worked out once). May be used from several threads; the order of use changes nothing.
 */
public final class Workbench {
    private final Models models;
    private final Map<CraftKey, Craft> crafts = new ConcurrentHashMap<>();
    private final Map<ThrowKey, ThrowReference> throwsSolved = new ConcurrentHashMap<>();
    /** Why there is no such throw. */
    private final Map<ThrowKey, String> notThrown = new ConcurrentHashMap<>();

    private final Map<MarginKey, Margins> todays = new ConcurrentHashMap<>();
    private final Map<CraftKey, Double> sharesToday = new ConcurrentHashMap<>();

    private record CraftKey(
            Glider glider, Corrections corrections, GlideSettings settings, Air air, ModelChoice model) {}

    private record MarginKey(CraftKey craft, double launchSpeed) {}

    private record ThrowKey(CraftKey craft, Launch launch, Axes axes) {}

    /** An empty bench. */
    public Workbench() {
        this(new Models());
    }

    private Workbench(Models models) {
        this.models = models;
    }

    /** An empty bench that shares this one's tables: for a piece of a study, whose gliders nobody asks for again. */
    Workbench apart() {
        return new Workbench(models);
    }

    /** The wing tables that scenarios share. */
    public Models models() {
        return models;
    }

    /** Answers a scenario. */
    public Result answer(Scenario scenario) {
        return answer(scenario, null);
    }

    /**
     * Answers a scenario and writes down its flight.
     *
     * @throws NoAnswerException if there is none: the message names the reason
     */
    public Result answer(Scenario scenario, FlightLog log) {
        try {
            return work(scenario, log);
        } catch (NoTrimException | NoThrowException | DesignException e) {
            throw new NoAnswerException(e.getMessage(), e);
        }
    }

    private Result work(Scenario scenario, FlightLog log) {
        Air air = scenario.launch().weather().ground();
        Rebalanced rebalanced = rebalance(scenario, air);
        Craft craft = craft(rebalanced.glider(), scenario, air);
        ThrowReference reference = reference(scenario);
        FlightPlan plan = plan(scenario, craft, air, reference);
        Outcome outcome = log == null ? Flight.fly(plan) : Flight.fly(plan, log);
        Margins margins = margins(rebalanced.glider(), scenario, air, reference.speed());
        GlidePolar polar = GlidePolar.of(craft, scenario.settings(), air);
        return new Result(
                plan, rebalanced, margins, TailVolumes.of(rebalanced.glider(), craft.reference()), outcome, polar);
    }

    private Rebalanced rebalance(Scenario scenario, Air air) {
        return Rebalance.apply(
                scenario.today(),
                scenario.glider(),
                scenario.rebalance(),
                glider -> same(glider, scenario.today())
                        ? sharesToday.computeIfAbsent(key(glider, scenario, air), key -> share(glider, scenario, air))
                        : share(glider, scenario, air));
    }

    /** Whether two gliders are alike; most often they are one and the same, and need not be gone through. */
    private static boolean same(Glider one, Glider other) {
        return one == other || one.equals(other);
    }

    private double share(Glider glider, Scenario scenario, Air air) {
        return Margins.share(
                glider, scenario.corrections(), models, scenario.flying().model(), air);
    }

    private Margins margins(Glider glider, Scenario scenario, Air air, double launchSpeed) {
        MarginKey key = new MarginKey(key(glider, scenario, air), launchSpeed);
        boolean today = same(glider, scenario.today());
        Margins known = today ? todays.get(key) : null;
        if (known != null) {
            return known;
        }
        Margins made = Margins.of(
                glider, scenario.corrections(), models, scenario.flying().model(), air, launchSpeed);
        if (today) {
            todays.put(key, made);
        }
        return made;
    }

    /** A glider made ready to fly in the scenario's air; today's and the thrower's are made once. */
    private Craft craft(Glider glider, Scenario scenario, Air air) {
        CraftKey key = key(glider, scenario, air);
        boolean kept = same(glider, scenario.today()) || same(glider, scenario.calibratedWith());
        if (!kept) {
            return made(key);
        }
        return crafts.computeIfAbsent(key, this::made);
    }

    /** A glider made ready to fly in a scenario's air and flown by its model, with other corrections; made anew. */
    public Craft craft(Glider glider, Scenario scenario, Corrections corrections) {
        return made(new CraftKey(
                glider,
                corrections,
                scenario.settings(),
                scenario.launch().weather().ground(),
                scenario.flying().model()));
    }

    private static CraftKey key(Glider glider, Scenario scenario, Air air) {
        return new CraftKey(
                glider,
                scenario.corrections(),
                scenario.settings(),
                air,
                scenario.flying().model());
    }

    private Craft made(CraftKey key) {
        return Craft.of(key.glider(), key.corrections(), models, key.model(), key.settings(), key.air());
    }

    /** The throw, worked out with the glider, the preset and the air it was seen with, all controls in the pilot's hands. */
    private ThrowReference reference(Scenario scenario) {
        Launch launch = scenario.sighting().launch();
        Air air = launch.weather().ground();
        ThrowKey key = new ThrowKey(key(scenario.calibratedWith(), scenario, air), launch, scenario.axes());
        ThrowReference known = throwsSolved.get(key);
        if (known == null) {
            String why = notThrown.get(key);
            if (why != null) {
                throw new NoThrowException(why);
            }
            try {
                known = solved(scenario, launch, air);
            } catch (NoThrowException e) {
                why = e.getMessage() + cause(scenario, air);
                notThrown.put(key, why);
                throw new NoThrowException(why);
            }
            throwsSolved.putIfAbsent(key, known);
        }
        return known;
    }

    private ThrowReference solved(Scenario scenario, Launch launch, Air air) {
        Craft seen = craft(scenario.calibratedWith(), scenario, air);
        return ThrowSolver.solve(new FlightPlan(
                seen,
                launch,
                Double.NaN,
                Double.NaN,
                presetFrom(seen, seen, launch),
                scenario.axes(),
                Adaptive::usual));
    }

    /** What keeps a glider from flying as it was seen to, when it is the balance. */
    private String cause(Scenario scenario, Air air) {
        double share = share(scenario.calibratedWith(), scenario, air);
        String behind = Numbers.fixed(Unit.PERCENT.fromSi(-share), 1);
        return share < 0 ? ". Its CG lies BEHIND the neutral point, by " + behind + " % of the chord" : "";
    }

    private FlightPlan plan(Scenario scenario, Craft craft, Air air, ThrowReference reference) {
        Launch launch = scenario.launch();
        PresetRule rule = scenario.presetRule();
        Craft countedFrom = rule == PresetRule.SAME_SURFACE_POSITION ? craft(scenario.today(), scenario, air) : craft;
        FlightPlan plan = new FlightPlan(
                craft,
                launch,
                reference.speedOf(craft, launch),
                reference.yawRate(),
                presetFrom(countedFrom, craft, launch),
                scenario.axes(),
                scenario.flying().steering(),
                Adaptive::usual);
        FlightPlan pushed = scenario.flying().push() == PushRule.BEST ? Best.push(plan) : plan;
        return rule == PresetRule.BEST_FOR_EACH ? Best.preset(pushed) : pushed;
    }

    /** Preset angle of a craft, counted in length at the trailing edge from the cruise position of another. */
    static double presetFrom(Craft countedFrom, Craft craft, Launch launch) {
        double cruise = Deflections.deflection(
                countedFrom.cruise().elevator(), countedFrom.deflections().elevatorChord());
        double down = cruise - launch.preset().elevatorUp();
        return Deflections.angle(down, craft.deflections().elevatorChord());
    }
}
