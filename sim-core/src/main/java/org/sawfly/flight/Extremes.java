package org.sawfly.flight;

import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.air.Standard;
import org.sawfly.motion.Kinematics;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StateLayout;
import org.sawfly.motion.Step;
import org.sawfly.motion.StepWatcher;

/**
 * Watches a flight for its top, the swing of the nose, the greatest load and for stalls. Looks at each step in
 * {@link #PIECES} pieces and goes to the exact place by the step's dense output, so that what it finds is smooth in
 * whatever is varied.
 */
final class Extremes implements StepWatcher {
    /** Angle of attack beyond which the wing counts as stalled, 12 degrees [rad]; common practice, no source. */
    static final double WING_STALL = 0.2094;

    private static final double STALL_SLOPE = Math.tan(WING_STALL);

    private static final int PIECES = 4;
    /** Loads, which cost as much as a step's stage, are looked at half way only through steps longer than this [s]. */
    private static final double LONG_STEP = 0.02;
    /** Loads and the fin are watched this long after release [s]. */
    private static final double EARLY = 1.2;
    /** The swing is looked for this long after release [s]. */
    private static final double SWING_TIME = 1.5;

    /** The roll is looked at this long after release [s]. */
    private static final double ROLL_TIME = 1;

    private final RigidBody body;
    private final double mass;
    private final double hand;
    private final double[] state = new double[StateLayout.SIZE];
    private final double[] rotation = new double[9];

    private double topTime = Double.NaN;
    private final double[] topState = new double[StateLayout.SIZE];
    private double lastClimb = Double.NaN;

    private final Peak first = new Peak();
    private final Peak back = new Peak();
    private final Peak load = new Peak();
    private final Peak toRight = new Peak();
    private final Peak toLeft = new Peak();
    private double rolled;
    private double furthest;
    private double furthestTime;
    private double finStalled;
    private double stalledSince = Double.NaN;
    private double longestStall;
    private double lastTime = Double.NaN;
    private double lastLoads = Double.NaN;
    private double lastBeyond;

    /**
     * For one flight.
     *
     * @param hand +1 for a right-hander: sign of the sideslip when the nose is on the side it was turning to
     */
    Extremes(RigidBody body, double mass, double hand) {
        this.body = body;
        this.mass = mass;
        this.hand = hand;
    }

    @Override
    public void watch(Step step) {
        double span = step.end() - step.start();
        if (Double.isNaN(lastTime)) {
            look(step, step.start(), true);
        }
        if (step.start() < ROLL_TIME) {
            watchRoll(step);
        }
        for (int i = 1; i <= PIECES; i++) {
            boolean halfWay = 2 * i == PIECES && span > LONG_STEP;
            look(step, i == PIECES ? step.end() : step.start() + span * i / PIECES, i == PIECES || halfWay);
        }
    }

    /** The roll rate summed up over a step by Simpson's rule, the time at the end of its halves. */
    private void watchRoll(Step step) {
        double half = (step.end() - step.start()) / 2;
        for (int i = 0; i < 2; i++) {
            double from = step.start() + i * half;
            double sum = rollRate(step, from) + 4 * rollRate(step, from + half / 2) + rollRate(step, from + half);
            rolled += sum * half / 6;
            if (from + half <= ROLL_TIME) {
                toRight.add(from + half, rolled);
                toLeft.add(from + half, -rolled);
                if (Math.abs(rolled) > furthest) {
                    furthest = Math.abs(rolled);
                    furthestTime = from + half;
                }
            }
        }
    }

    private double rollRate(Step step, double t) {
        step.at(t, state);
        return state[StateLayout.P];
    }

    private void look(Step step, double t, boolean atLoads) {
        step.at(t, state);
        Motion motion = body.motionAt(t, state);
        watchStall(t, motion);
        if (t <= SWING_TIME) {
            double beta = Kinematics.beta(motion);
            first.add(t, hand * beta);
            if (first.passed()) {
                back.add(t, -hand * beta);
            }
        }
        if (atLoads && t <= EARLY) {
            Loads loads = body.loadsAt(t, state);
            load.add(t, Math.abs(loads.fz) / (mass * Standard.GRAVITY));
            watchFin(t, Math.abs(loads.finAngle) - Swing.FIN_STALL);
        }
        watchTop(step, t);
        lastTime = t;
    }

    /** Adds the time beyond the fin's stall since the last look, the angle taken to change evenly between looks. */
    private void watchFin(double t, double beyond) {
        if (!Double.isNaN(lastLoads)) {
            double before = Math.max(lastBeyond, 0);
            double after = Math.max(beyond, 0);
            double all = Math.abs(lastBeyond) + Math.abs(beyond);
            double share = lastBeyond * beyond > 0 || all == 0 ? (beyond > 0 ? 1 : 0) : (before + after) / all;
            finStalled += share * (t - lastLoads);
        }
        lastLoads = t;
        lastBeyond = beyond;
    }

    private void watchStall(double t, Motion motion) {
        boolean beyond = motion.u <= 0 || Math.abs(motion.w) > STALL_SLOPE * motion.u;
        if (beyond && Kinematics.airspeed(motion) > 1) {
            if (Double.isNaN(stalledSince)) {
                stalledSince = t;
            }
            longestStall = Math.max(longestStall, t - stalledSince);
        } else {
            stalledSince = Double.NaN;
        }
    }

    /** The top is the highest end of a climb: a glider may dip as it leaves the hand. */
    private void watchTop(Step step, double t) {
        Kinematics.rotation(state, rotation);
        double climb = Kinematics.climbRate(state, rotation);
        if (lastClimb > 0 && climb <= 0) {
            double ended = rootOfClimb(step, lastTime, lastClimb, t, climb);
            step.at(ended, state);
            if (!hasTop() || Kinematics.height(state) > Kinematics.height(topState)) {
                topTime = ended;
                System.arraycopy(state, 0, topState, 0, state.length);
            }
        }
        lastClimb = climb;
    }

    /** Where the climb ends: regula falsi with the halving of Illinois, on the dense output. */
    private double rootOfClimb(Step step, double t0, double climb0, double t1, double climb1) {
        double a = Math.max(t0, step.start());
        double fa = climb0;
        double b = t1;
        double fb = climb1;
        int side = 0;
        for (int i = 0; i < 60 && b - a > 1e-12; i++) {
            double c = (fa * b - fb * a) / (fa - fb);
            step.at(c, state);
            Kinematics.rotation(state, rotation);
            double fc = Kinematics.climbRate(state, rotation);
            if (Math.abs(fc) < 1e-13) {
                return c;
            }
            if (fc > 0) {
                a = c;
                fa = fc;
                fb = side == 1 ? fb / 2 : fb;
                side = 1;
            } else {
                b = c;
                fb = fc;
                fa = side == -1 ? fa / 2 : fa;
                side = -1;
            }
        }
        return b;
    }

    boolean hasTop() {
        return !Double.isNaN(topTime);
    }

    double topTime() {
        return topTime;
    }

    double[] topState() {
        return topState;
    }

    double longestStall() {
        return longestStall;
    }

    /** Forgets the stalls seen so far. */
    void forgetStalls() {
        longestStall = 0;
        stalledSince = Double.NaN;
    }

    Swing swing() {
        return new Swing(Math.max(0, first.value()), first.time(), Math.max(0, back.value()), finStalled);
    }

    /** The largest roll in the first second, to the right positive [rad]. */
    double rolled() {
        double right = Math.max(0, toRight.greatest());
        double left = Math.max(0, toLeft.greatest());
        return right >= left ? right : -left;
    }

    /** When it was at its largest [s]. */
    double rolledTime() {
        return furthestTime;
    }

    double maxLoad() {
        return load.greatest();
    }
}
