package org.sawfly.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.sawfly.file.ScenarioFile;
import org.sawfly.file.StudyFile;
import org.sawfly.flight.Flight;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Scenario;
import org.sawfly.motion.Adaptive;
import org.sawfly.motion.Axes;
import org.sawfly.motion.Equations;
import org.sawfly.motion.Integrator;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StepWatcher;
import org.sawfly.motion.Stop;
import org.sawfly.motion.StopEvent;
import org.sawfly.study.Workbench;

/** The demo glider thrown by the club's thrower, for the benchmarks. */
final class Demo {
    private static final Path FOLDER = Path.of("..", "scenarios");

    private Demo() {}

    static Scenario scenario() {
        return ScenarioFile.open(FOLDER.resolve("plover.yaml"), FOLDER.resolve("club.yaml"))
                .with(List.of());
    }

    /** The study of the boom cut shorter and shorter, margin kept. */
    static StudyFile study() {
        return StudyFile.open(FOLDER.resolve("shorten-boom.yaml"));
    }

    /** One flight from release to settled height: 8 s, in pitch and yaw, model built, throw solved. */
    static FlightPlan plan() {
        return new Workbench().answer(scenario()).plan();
    }

    static FlightPlan with(FlightPlan plan, Axes axes, Supplier<Integrator> integrator) {
        return new FlightPlan(
                plan.craft(),
                plan.launch(),
                plan.releaseSpeed(),
                plan.yawRate(),
                plan.presetElevator(),
                axes,
                integrator);
    }

    /** Flies once and keeps body, times and states at the ends of all steps. */
    static Recorder recorded() {
        Recorder recorder = new Recorder();
        Flight.fly(with(plan(), Axes.PITCH_YAW, () -> recorder));
        return recorder;
    }

    /** An integrator that writes down where it has been. */
    static final class Recorder implements Integrator {
        final List<Double> times = new ArrayList<>();
        final List<double[]> states = new ArrayList<>();
        RigidBody body;
        private final Adaptive adaptive = Adaptive.usual();

        @Override
        public Stop run(
                Equations system,
                double start,
                double[] state,
                double end,
                List<StopEvent> stops,
                List<StepWatcher> watchers) {
            body = (RigidBody) system;
            List<StepWatcher> all = new ArrayList<>(watchers);
            all.add(step -> {
                double[] at = new double[state.length];
                step.at(step.end(), at);
                times.add(step.end());
                states.add(at);
            });
            return adaptive.run(system, start, state, end, stops, all);
        }

        @Override
        public int evaluations() {
            return adaptive.evaluations();
        }
    }
}
