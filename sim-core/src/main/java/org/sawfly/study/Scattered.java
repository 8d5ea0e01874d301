package org.sawfly.study;

import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.Launch;
import org.sawfly.flight.LaunchDoubts;
import org.sawfly.flight.ReleasePath;
import org.sawfly.flight.Weather;
import org.sawfly.quantity.Unit;

/**
 * What differs from one throw to the next, each with its key and how much it usually differs: a standard deviation. Sizes:
 * common practice, no source.
 *
 * <p>Letting go at another moment: the circle of the spin slopes, it climbs by {@code g} in the direction of the throw. An
 * angle {@code a} of the circle further on the path climbs {@code asin(sin g cos a)}, and the wings, which lie in the circle,
 * are banked by {@code atan(tan g sin a)}, too late with the tip in the hand low.
 */
public enum Scattered implements Inexact {
    /** Follows from the scatter of the heights where nobody gives it. */
    SPEED("speed_pct", "speed of the throw", Double.NaN),
    TURNING("turning_pct", "turning left at release", 0.15),
    NOSE_OUT("nose_out_deg", "nose outward at release", Unit.DEGREE.toSi(2)),
    LETTING_GO("letting_go_s", "moment of letting go", 0.01),
    BANK("bank_deg", "bank at release", Unit.DEGREE.toSi(4)),
    CLIMB("climb_deg", "steepness of the climb", Unit.DEGREE.toSi(3)),
    TIMING("timing_s", "timing of the pilot", 0.05),
    WIND("wind_mps", "wind", 0.5);

    private final Usual usually;

    Scattered(String key, String words, double deviation) {
        this.usually = new Usual(key, words, deviation);
    }

    /** Its standard deviation; NaN when it is to be worked out. */
    @Override
    public Usual usually() {
        return usually;
    }

    /**
     * A throw that is off.
     *
     * @param plan as meant
     * @param spin turning rate before the hand opens [rad/s]
     * @param off by how much, in the order of these [SI; shares as 1]
     */
    static FlightPlan thrown(FlightPlan plan, double spin, double[] off) {
        Launch meant = plan.launch();
        LaunchDoubts d = meant.doubts();
        LaunchDoubts doubts = new LaunchDoubts(
                d.noseOut() + off[NOSE_OUT.ordinal()],
                d.steeper() + off[CLIMB.ordinal()],
                d.presetUp(),
                d.pushFaster(),
                d.late() + off[TIMING.ordinal()],
                d.bank() + off[BANK.ordinal()]);
        double further = spin * off[LETTING_GO.ordinal()];
        ReleasePath path = new ReleasePath(
                meant.releaseHeight(),
                Math.asin(Math.sin(meant.releaseClimb()) * Math.cos(further)),
                meant.releasePath().bank() + Math.atan(Math.tan(meant.releaseClimb()) * Math.sin(further)));
        Weather w = meant.weather();
        Weather weather =
                new Weather(w.wind() + off[WIND.ordinal()], w.shearExponent(), w.temperature(), w.fieldHeight());
        return plan.withLaunch(meant.with(path).with(weather).with(doubts))
                .withRelease(
                        plan.releaseSpeed() * (1 + off[SPEED.ordinal()]),
                        plan.yawRate() * (1 + off[TURNING.ordinal()]));
    }
}
