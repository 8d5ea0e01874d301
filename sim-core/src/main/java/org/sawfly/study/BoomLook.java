package org.sawfly.study;

import org.sawfly.aero.Corrections;
import org.sawfly.aero.Models;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.air.Standard;
import org.sawfly.flight.FlightPlan;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.BoomSwing;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Tailplane;
import org.sawfly.strength.BenchBend;
import org.sawfly.strength.BoomStrength;
import org.sawfly.strength.TailEffectiveness;

/**
 * The boom of an answered scenario looked at closely: on the bench and in the launch.
 *
 * @param plan the launch
 * @param strength what it bears against what the launch asks
 */
public record BoomLook(FlightPlan plan, BoomStrength strength) {
    /** Of an answered scenario. */
    public static BoomLook of(Result result) {
        return new BoomLook(result.plan(), BoomStrength.of(result.plan()));
    }

    /** The glider as flown. */
    public Glider glider() {
        return plan.craft().glider();
    }

    /** Whether its stiffness comes from a bend test of this very boom. */
    public boolean tested() {
        return glider().boom().stiffness() instanceof BoomStiffness.OfBendTest;
    }

    /** Where the boom is held on the bench: as in its bend test, else at the wing's trailing edge, build axes [m]. */
    public double heldX() {
        Boom boom = glider().boom();
        if (boom.stiffness() instanceof BoomStiffness.OfBendTest test) {
            return test.heldX();
        }
        return Math.min(boom.frontX(), -glider().wing().planform().chordAt(0));
    }

    /** Where the weight hangs: as in its bend test, else at the tailplane's quarter chord or the boom's end [m]. */
    public double hungX() {
        Boom boom = glider().boom();
        if (boom.stiffness() instanceof BoomStiffness.OfBendTest test) {
            return test.hungX();
        }
        Tailplane tailplane = glider().tailplane();
        return Math.max(boom.endX(), tailplane.x() - tailplane.planform().quarterPointBack());
    }

    /** How far a mass hung there moves the boom [m], in any plane. */
    public double moves(double mass) {
        return BenchBend.moves(glider().boom(), heldX(), hungX(), mass * Standard.GRAVITY);
    }

    /** How far a mass on an arm across the boom twists it there [rad]. */
    public double twists(double mass, double arm) {
        return BenchBend.twists(glider().boom(), heldX(), hungX(), mass * Standard.GRAVITY * arm);
    }

    /** First frequency with the wing held fast [Hz]. */
    public double swingsHeld(BoomSwing.Plane plane) {
        return BoomSwing.held(glider(), plane);
    }

    /** First frequency in flight [Hz]. */
    public double swingsInFlight(BoomSwing.Plane plane) {
        return BoomSwing.inFlight(glider(), plane);
    }

    /** What is left of the tails at a speed [m/s]. */
    public TailEffectiveness effectiveness(Corrections corrections, Models models, double speed) {
        double density = plan.launch().weather().ground().density();
        TailVolumeModel model = TailVolumeModel.of(glider(), plan.craft().mass(), corrections, models);
        return TailEffectiveness.of(glider(), plan.craft().mass(), model, speed, density);
    }
}
