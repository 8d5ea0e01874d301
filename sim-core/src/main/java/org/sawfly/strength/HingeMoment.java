package org.sawfly.strength;

import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Planform;
import org.sawfly.glider.Tailplane;
import org.sawfly.math.Quadrature;
import org.sawfly.section.MeasuredFlap;
import org.sawfly.section.PlainFlap;

/**
 * The air's moment about the hinge of elevator or rudder, and what holds it.
 *
 * <p>Thin-aerofoil theory (Glauert, R&amp;M 1095, 1927) on the strips of the tail: the section angle that goes with a lift
 * coefficient CL and a deflection delta is {@code CL/2 pi - tau delta}, so that
 *
 * <pre>  H = k q B [C_a (CL/2 pi - tau delta) + C_d delta],   B = int c_f^2 dy</pre>
 *
 * with k the share of theory that flaps are measured to do at that Reynolds number. Deflection and moment positive the same
 * way, elevator trailing edge down or rudder trailing edge left; CL positive towards the other side (up, right).
 * A tail that turns as a whole about its quarter chord has no moment.
 *
 * @param squared B, integral of the flap chord squared [m3]
 * @param area of the whole tail [m2]
 * @param chord mean chord [m]
 * @param flap theory of this flap; null for a tail that turns as a whole
 */
public record HingeMoment(double squared, double area, double chord, PlainFlap flap) {
    /** Of the elevator. */
    public static HingeMoment ofElevator(Glider glider) {
        Tailplane t = glider.tailplane();
        return new HingeMoment(
                2 * squared(t.planform(), t.elevatorChord()),
                2 * t.planform().area(),
                t.planform().meanChord(),
                flap(t.elevatorChord()));
    }

    /** Of the rudder. */
    public static HingeMoment ofRudder(Glider glider) {
        Fin f = glider.fin();
        double chord = (f.above().area() * f.above().meanChord()
                        + f.below().area() * f.below().meanChord())
                / f.area();
        return new HingeMoment(
                squared(f.above(), f.rudderChord()) + squared(f.below(), f.rudderChord()),
                f.area(),
                chord,
                flap(f.rudderChord()));
    }

    private static double squared(Planform planform, double share) {
        double sum = 0;
        for (int i = 1; i < planform.stations().size(); i++) {
            sum += Quadrature.integral(
                    y -> Math.pow(share * planform.chordAt(y), 2),
                    planform.stations().get(i - 1).out(),
                    planform.stations().get(i).out());
        }
        return sum;
    }

    private static PlainFlap flap(double share) {
        return share > 0 && share < 1 ? PlainFlap.of(share) : null;
    }

    /**
     * Moment about the hinge [N m].
     *
     * @param pressure dynamic pressure q [Pa]
     * @param lift coefficient CL of the whole tail [1]
     * @param deflection delta [rad]
     * @param reynolds of the mean chord [1]
     */
    public double at(double pressure, double lift, double deflection, double reynolds) {
        if (flap == null) {
            return 0;
        }
        double angle = lift / (2 * Math.PI) - flap.effectiveness() * deflection;
        double coefficient = flap.hingeAlpha() * angle + flap.hingeDelta() * deflection;
        return MeasuredFlap.share(reynolds) * pressure * squared * coefficient;
    }

    /**
     * How much of a deflection is left when the air presses it back against a spring or a string that stretches [1]:
     * {@code 1/(1 + k q B |C_d|/K)}, the tail's own angle unchanged.
     *
     * @param rate K of spring and string about the hinge [N m/rad]
     */
    public double left(double pressure, double rate, double reynolds) {
        double stiffness =
                flap == null ? 0 : MeasuredFlap.share(reynolds) * pressure * squared * Math.abs(flap.hingeDelta());
        return 1 / (1 + stiffness / rate);
    }

    /**
     * Spring torque that holds a moment with a reserve [N m].
     *
     * @param moment about the hinge [N m]
     * @param reserve so many times [1]
     */
    public static double springTorque(double moment, double reserve) {
        return Math.abs(moment) * reserve;
    }

    /** Pull in the string that overcomes spring and air together [N], on a horn of an arm [m]. */
    public static double stringPull(double springTorque, double moment, double arm) {
        return (springTorque + Math.abs(moment)) / arm;
    }

    /**
     * The speed from which the air turns the flap against its spring [m/s]: moments grow with its square.
     *
     * @param springTorque at the flap's place [N m]
     * @param moment the air's at a speed [N m]
     * @param speed that speed [m/s]
     */
    public static double followsFrom(double springTorque, double moment, double speed) {
        return moment == 0 ? Double.POSITIVE_INFINITY : speed * Math.sqrt(springTorque / Math.abs(moment));
    }
}
