package org.sawfly.aero;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Piece;

/**
 * How the tails turn when the boom bends, as algebra: the boom is a beam held where it leaves the pod, loaded by a tail's
 * air force F and moment M and by the inertia of whatever it carries and of itself,
 *
 * <pre>  theta = theta_F F + theta_M M - theta_f f,   theta = int (bending moment)/EI dx</pre>
 *
 * with f the specific force (acceleration less gravity) at the tail. On a uniform tube with all load at its end
 * {@code theta_F = L^2/2EI}, {@code theta_M = L/EI}, {@code theta_f = theta_F (m_t + mu L/3)}. Positive: upwards in the vertical
 * plane (the tailplane noses down by theta), to the right in the side plane (the fin turns nose left by theta).
 *
 * <p>Two measures of it, q S a the tail's force per angle: <b>held</b>, air load alone, what a change of trim with speed
 * shows, {@code eta = 1/(1 + q S_t a_t theta_F)}; and <b>free flight</b>, where a pull-up also loads the boom with inertia,
 * {@code eta [1 + theta_f q S a_w/(m (1 - d epsilon/d alpha))]}.
 *
 * @param force theta_F [rad/N]
 * @param moment theta_M [rad/(N m)]
 * @param inertia theta_f [rad/(m/s2)]
 * @param travel way of the tail for a slope of one, under a force at the tail [m/rad]; {@code 2 L/3} for a uniform tube
 */
public record BoomFlex(double force, double moment, double inertia, double travel) {
    private static final Set<String> NOT_CARRIED = Set.of(Piece.BOOM, Piece.WING, Piece.POD, Piece.NOSE_LEAD);

    /**
     * Bending seen by a tail.
     *
     * @param placeX quarter point of the tail, build axes [m]; behind the boom's end the tail goes on stiff
     * @param stiffnessFactor on EI [1]
     */
    static BoomFlex at(Glider glider, double placeX, double stiffnessFactor) {
        BoomTube tube = BoomTube.of(glider.boom());
        double held = glider.boom().frontX();
        double end = glider.boom().endX();
        double place = Math.max(placeX, end);
        double inertia = tube.slopeOfOwnMass(held, place);
        for (MassProperties load : carried(glider, held)) {
            double where = Math.max(load.cg().x(), end);
            inertia += load.mass()
                    * (tube.slopeOfForce(held, where, place)
                            + (where - load.cg().x()) * tube.slopeOfMoment(held, where, place));
        }
        double past = place - placeX;
        double moment = tube.slopeOfMoment(held, place, place);
        double slopeAtEnd = tube.slopeOfForce(held, place, place);
        double force = slopeAtEnd + past * moment;
        double travel = (tube.deflectionOfForce(held, place, place) + past * (slopeAtEnd + force)) / force;
        return new BoomFlex(force / stiffnessFactor, moment / stiffnessFactor, inertia / stiffnessFactor, travel);
    }

    /** Everything the boom carries behind the place it is held at: not itself, nor what carries it. */
    private static List<MassProperties> carried(Glider glider, double heldX) {
        List<MassProperties> loads = new ArrayList<>();
        for (Piece piece : Piece.all(glider)) {
            if (!NOT_CARRIED.contains(piece.name()) && piece.properties().cg().x() < heldX) {
                loads.add(piece.properties());
            }
        }
        return loads;
    }

    /**
     * Held effectiveness of a tail [1].
     *
     * @param forcePerAngle q S_t a_t, its air force per angle [N/rad]
     */
    public double held(double forcePerAngle) {
        return 1 / (1 + force * forcePerAngle);
    }

    /**
     * Effectiveness in free flight [1], 1 or above on most gliders.
     *
     * @param forcePerAngle q S_t a_t of the tail [N/rad]
     * @param wingForcePerAngle q S a_w of the whole wing [N/rad]
     * @param mass of the glider [kg]
     * @param downwashSlope d epsilon/d alpha [1]
     */
    public double free(double forcePerAngle, double wingForcePerAngle, double mass, double downwashSlope) {
        return held(forcePerAngle) * (1 + inertia * wingForcePerAngle / (mass * (1 - downwashSlope)));
    }
}
