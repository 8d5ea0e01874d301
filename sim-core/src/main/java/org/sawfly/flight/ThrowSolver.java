package org.sawfly.flight;

import org.sawfly.motion.Axes;

/**
 * Works out release speed and yaw rate from what can be seen on the field: the usual launch height and the first swing of
 * the nose, with the glider they were seen with.
 *
 * <p>Two unknowns, two sightings: Newton's method with a secant (Broyden) update of the matrix of slopes, each trial a
 * flight. In {@link Axes#PITCH} there is no swing and only the speed is sought.
 */
public final class ThrowSolver {
    private static final double HEIGHT_TOLERANCE = 1e-6;
    private static final double SWING_TOLERANCE = 1e-7;
    private static final int MOST_FLIGHTS = 60;
    private static final double SLOWEST = 3;
    private static final double FASTEST = 150;
    private static final double LARGEST_SPEED_STEP = 8;
    private static final double LARGEST_RATE_STEP = 4;

    private final FlightPlan plan;
    private final double height;
    private final double swing;
    private final boolean swinging;
    private double speed;
    private double rate;

    private ThrowSolver(FlightPlan plan) {
        Thrower thrower = plan.launch().thrower();
        this.plan = plan;
        this.height = thrower.usualHeight();
        this.swinging = plan.axes() != Axes.PITCH && !Double.isNaN(thrower.firstSwing());
        this.swing = thrower.firstSwing();
        // about +2 m of height for +1 m/s: common practice, no source; only where the search begins
        this.speed = Double.isNaN(height) ? thrower.releaseSpeed() : 13 + 0.5 * height;
        this.rate = swinging ? 25 * swing : Double.isNaN(thrower.releaseRate()) ? 0 : thrower.releaseRate();
    }

    /**
     * The throw that gives what was seen.
     *
     * @param plan the glider it was seen with, the launch, its preset; the release in it is not used
     * @throws NoThrowException if no release does
     */
    public static ThrowReference solve(FlightPlan plan) {
        ThrowSolver solver = new ThrowSolver(plan);
        solver.solve();
        return new ThrowReference(solver.speed, solver.rate, ThrowReference.spunMass(plan.craft(), plan.launch()));
    }

    private void solve() {
        boolean seekSpeed = !Double.isNaN(height);
        if (!seekSpeed && !swinging) {
            return;
        }
        double[] miss = miss(speed, rate);
        double[][] slopes = {{2, 0}, {0, 0.04}};
        if (swinging) {
            double[] more = miss(speed, rate + 0.5);
            slopes[0][1] = (more[0] - miss[0]) / 0.5;
            slopes[1][1] = (more[1] - miss[1]) / 0.5;
        }
        if (seekSpeed) {
            double[] more = miss(speed + 0.5, rate);
            slopes[0][0] = (more[0] - miss[0]) / 0.5;
            slopes[1][0] = (more[1] - miss[1]) / 0.5;
        }
        for (int i = 0; i < MOST_FLIGHTS; i++) {
            boolean high = !seekSpeed || Math.abs(miss[0]) < HEIGHT_TOLERANCE;
            boolean swung = !swinging || Math.abs(miss[1]) < SWING_TOLERANCE;
            if (high && swung) {
                return;
            }
            double[] step = step(slopes, miss, seekSpeed);
            double v = Math.max(SLOWEST, Math.min(FASTEST, speed + step[0]));
            double r = Math.max(0, Math.min(60, rate + step[1]));
            double dv = v - speed;
            double dr = r - rate;
            if (dv == 0 && dr == 0) {
                break;
            }
            double[] now = miss(v, r);
            update(slopes, dv, dr, now[0] - miss[0], now[1] - miss[1]);
            speed = v;
            rate = r;
            miss = now;
        }
        throw new NoThrowException(words(miss));
    }

    private double[] step(double[][] j, double[] miss, boolean seekSpeed) {
        double dv;
        double dr;
        if (!swinging) {
            dv = -miss[0] / j[0][0];
            dr = 0;
        } else if (!seekSpeed) {
            dv = 0;
            dr = -miss[1] / j[1][1];
        } else {
            double det = j[0][0] * j[1][1] - j[0][1] * j[1][0];
            dv = (-miss[0] * j[1][1] + miss[1] * j[0][1]) / det;
            dr = (-miss[1] * j[0][0] + miss[0] * j[1][0]) / det;
        }
        double shrink = Math.max(1, Math.max(Math.abs(dv) / LARGEST_SPEED_STEP, Math.abs(dr) / LARGEST_RATE_STEP));
        return Double.isFinite(dv + dr) ? new double[] {dv / shrink, dr / shrink} : new double[] {0.1, 0.1};
    }

    private static void update(double[][] j, double dv, double dr, double df0, double df1) {
        double norm = dv * dv + dr * dr;
        double e0 = (df0 - j[0][0] * dv - j[0][1] * dr) / norm;
        double e1 = (df1 - j[1][0] * dv - j[1][1] * dr) / norm;
        j[0][0] += e0 * dv;
        j[0][1] += e0 * dr;
        j[1][0] += e1 * dv;
        j[1][1] += e1 * dr;
    }

    /** Height and swing of a throw less what was seen. */
    private double[] miss(double v, double r) {
        Outcome outcome = Flight.fly(plan.withRelease(v, r));
        double top = outcome.top().height();
        if (Double.isNaN(top)) {
            throw new NoThrowException("a release at "
                    + Math.round(10 * v) / 10.0
                    + " m/s "
                    + outcome.ended().words()
                    + " before any top: no throw gives the usual height with this glider and preset");
        }
        return new double[] {
            Double.isNaN(height) ? 0 : top - height, swinging ? outcome.swing().first() - swing : 0
        };
    }

    private String words(double[] miss) {
        if (!Double.isNaN(height) && Math.abs(miss[0]) > 0.01) {
            return "no throw up to " + Math.round(FASTEST) + " m/s gives the usual height with this glider and preset";
        }
        return "no yaw rate at release gives the first swing that was seen";
    }
}
