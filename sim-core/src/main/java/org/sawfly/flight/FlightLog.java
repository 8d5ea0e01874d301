package org.sawfly.flight;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Loss;
import org.sawfly.aero.Motion;
import org.sawfly.air.Standard;
import org.sawfly.motion.Kinematics;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StateLayout;
import org.sawfly.motion.Step;
import org.sawfly.motion.StepWatcher;

/**
 * A flight written down every {@link #INTERVAL}, and the powers the same flight would have cost straight ahead (no
 * sideslip, roll or yaw), from which follows what wag and roll cost.
 */
public final class FlightLog implements StepWatcher {
    /** Time between rows [s]. */
    public static final double INTERVAL = 0.01;

    /**
     * One row.
     *
     * @param time after release [s]
     * @param distance over the ground along the throw [m]
     * @param height above the ground [m]
     * @param speed through the air [m/s]
     * @param pathAngle above the horizon [rad]
     * @param elevator trailing edge down positive [rad]
     * @param load along the glider's own down axis in multiples of gravity, lift upward positive [1]
     * @param side what goes on sideways
     */
    public record Row(
            double time,
            double distance,
            double height,
            double speed,
            double pathAngle,
            double elevator,
            double load,
            Side side) {
        /** Nose off the flight path, to the side it was turning to at release positive [rad]. */
        public double noseOff() {
            return side.noseOff();
        }

        /** Angle of the air at the fin, magnitude [rad]. */
        public double finAngle() {
            return side.finAngle();
        }
    }

    /**
     * What goes on sideways; right positive but for the nose.
     *
     * @param noseOff nose off the flight path, to the side it was turning to at release positive [rad]
     * @param finAngle angle of the air at the fin, magnitude [rad]
     * @param drift from the vertical plane of the throw [m]
     * @param heading of the path over the ground against the direction of the throw [rad]
     * @param rolled turned about its own long axis since release [rad]
     */
    public record Side(double noseOff, double finAngle, double drift, double heading, double rolled) {}

    private final List<Row> rows = new ArrayList<>();
    private final List<double[]> straightPowers = new ArrayList<>();
    private final double[] state = new double[StateLayout.SIZE];
    private final double[] rotation = new double[9];
    private final Motion straightMotion = new Motion();
    private final Loads straightLoads = new Loads();
    private RigidBody body;
    private AeroEvaluator evaluator;
    private double mass;
    private double hand;
    private double rolled;
    private double lastRoll;

    /** Starts anew for one flight. */
    void begin(RigidBody flown, Craft craft, double handSign) {
        body = flown;
        evaluator = craft.model().evaluator();
        mass = craft.mass().mass();
        hand = handSign;
        rolled = 0;
        rows.clear();
        straightPowers.clear();
    }

    /** The rows in order of time. */
    public List<Row> rows() {
        return List.copyOf(rows);
    }

    @Override
    public void watch(Step step) {
        while (rows.size() * INTERVAL <= step.end()) {
            double t = Math.max(step.start(), rows.size() * INTERVAL);
            step.at(t, state);
            write(t);
        }
    }

    private void write(double t) {
        Loads loads = body.loadsAt(t, state);
        double load = -loads.fz / (mass * Standard.GRAVITY);
        Motion motion = body.motionAt(t, state);
        double before = lastRoll;
        lastRoll = motion.p;
        rolled += rows.isEmpty() ? 0 : 0.5 * (before + lastRoll) * INTERVAL;
        Side side = new Side(
                hand * Kinematics.beta(motion),
                Math.abs(loads.finAngle),
                state[StateLayout.EAST],
                Kinematics.heading(state, rotation),
                rolled);
        rows.add(new Row(
                t,
                state[StateLayout.NORTH],
                Kinematics.height(state),
                Kinematics.airspeed(motion),
                Kinematics.pathAngle(state, rotation),
                motion.elevator,
                load,
                side));
        straightPowers.add(straightPower(motion));
    }

    private double[] straightPower(Motion motion) {
        double speed = Kinematics.airspeed(motion);
        double alpha = Kinematics.alpha(motion);
        straightMotion.u = speed * Math.cos(alpha);
        straightMotion.v = 0;
        straightMotion.w = speed * Math.sin(alpha);
        straightMotion.p = 0;
        straightMotion.q = motion.q;
        straightMotion.r = 0;
        straightMotion.density = motion.density;
        straightMotion.kinematicViscosity = motion.kinematicViscosity;
        straightMotion.gx = motion.gx;
        straightMotion.gy = 0;
        straightMotion.gz = motion.gz;
        straightMotion.elevator = motion.elevator;
        straightMotion.camber = motion.camber;
        straightMotion.downwashLag = motion.downwashLag;
        evaluator.evaluate(straightMotion, straightLoads);
        return straightLoads.power.clone();
    }

    /** Energy by loss up to a time had it flown straight: the trapezoids of the rows [J]. */
    Map<Loss, Double> straight(double end) {
        Map<Loss, Double> sums = new EnumMap<>(Loss.class);
        for (Loss loss : Loss.values()) {
            double sum = 0;
            for (int i = 1; i < rows.size() && rows.get(i - 1).time() < end; i++) {
                double t0 = rows.get(i - 1).time();
                double t1 = rows.get(i).time();
                double p0 = straightPowers.get(i - 1)[loss.ordinal()];
                double p1 = straightPowers.get(i)[loss.ordinal()];
                double part = Math.min(end, t1) - t0;
                double at = p0 + (p1 - p0) * part / (t1 - t0);
                sum += 0.5 * (p0 + at) * part;
            }
            sums.put(loss, sum);
        }
        return sums;
    }

    /** The remarkable moments. */
    List<Moment> moments(double pushTime, Top top, boolean settled) {
        List<Moment> moments = new ArrayList<>();
        add(moments, Moment.Kind.RELEASE, 0);
        add(moments, Moment.Kind.WAG_OVER, wagOver(pushTime));
        add(moments, Moment.Kind.PULLED_UP, pulledUp(pushTime));
        add(moments, Moment.Kind.PUSH_OVER, pushTime);
        add(moments, Moment.Kind.TOP, top.time());
        add(moments, Moment.Kind.GLIDING, settled ? rows.get(rows.size() - 1).time() : Double.NaN);
        return moments;
    }

    /** The last time before the push-over at which the nose still stands 3 degrees off the path, NaN if it never did. */
    private double wagOver(double pushTime) {
        double last = Double.NaN;
        for (Row row : rows) {
            if (row.time() < pushTime && Math.abs(row.noseOff()) > 0.0524) {
                last = row.time();
            }
        }
        return last;
    }

    /** When the path first stands at nine tenths of its steepest. */
    private double pulledUp(double pushTime) {
        double steepest = 0;
        for (Row row : rows) {
            if (!(row.time() > pushTime)) {
                steepest = Math.max(steepest, row.pathAngle());
            }
        }
        for (Row row : rows) {
            if (row.pathAngle() >= 0.9 * steepest) {
                return row.time();
            }
        }
        return Double.NaN;
    }

    private void add(List<Moment> moments, Moment.Kind kind, double time) {
        if (Double.isNaN(time) || rows.isEmpty()) {
            return;
        }
        int index = (int) Math.max(0, Math.min(rows.size() - 1.0, Math.floor(time / INTERVAL)));
        Row a = rows.get(index);
        Row b = rows.get(Math.min(rows.size() - 1, index + 1));
        double x = b.time() > a.time() ? (time - a.time()) / (b.time() - a.time()) : 0;
        moments.add(new Moment(
                kind,
                time,
                a.height() + x * (b.height() - a.height()),
                a.distance() + x * (b.distance() - a.distance()),
                a.speed() + x * (b.speed() - a.speed()),
                a.pathAngle() + x * (b.pathAngle() - a.pathAngle())));
    }
}
