package org.sawfly.strength;

import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.RearLoads;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.RearMasses;
import org.sawfly.glider.Tailplane;
import org.sawfly.math.Vec3;

/**
 * The boom with all it carries, for the load at any station: masses times their acceleration, and the air on both tails.
 * Air on the boom itself and pull along it are left out; in a spin both relieve it by a few per cent.
 */
public final class LoadedBoom {
    /** Panels of three points into which what is spread along the boom is cut. */
    private static final int PANELS = 6;

    private final Glider glider;
    private final RearMasses masses;
    private final Vec3 cg;
    private final Vec3 tailplane;
    private final Vec3 fin;

    /**
     * For one glider.
     *
     * @param cg of the whole glider, build axes [m]
     */
    public LoadedBoom(Glider glider, Vec3 cg) {
        this.glider = glider;
        this.masses = RearMasses.of(glider);
        this.cg = cg;
        Tailplane t = glider.tailplane();
        this.tailplane = new Vec3(t.x() - t.planform().quarterPointBack(), 0, t.z());
        Fin f = glider.fin();
        double below = f.below().area() * f.below().meanChordOut()
                - f.above().area() * f.above().meanChordOut();
        this.fin = new Vec3(f.x() - f.quarterPointBack(), 0, f.z() + below / f.area());
    }

    /** Of the glider of a launch. */
    public LoadedBoom(FlightPlan plan) {
        this(plan.craft().glider(), plan.craft().mass().cg());
    }

    /** What the boom carries at x, build axes [m]. */
    public BoomLoad at(double x, RearLoads rear) {
        double z = glider.boom().z();
        LoadSum sum = new LoadSum();
        for (RearMasses.Mass mass : masses.behind(x, PANELS)) {
            Vec3 force = rear.specificForceAt(mass.place().minus(cg)).times(-mass.mass());
            Vec3 moment = mass.inertia().times(rear.turning()).times(-1);
            sum.add(mass.place().x() - x, mass.place().z() - z, force, moment);
        }
        if (tailplane.x() < x) {
            sum.add(
                    tailplane.x() - x,
                    tailplane.z() - z,
                    new Vec3(0, 0, rear.tailplaneForce()),
                    new Vec3(0, rear.tailplaneMoment(), 0));
        }
        if (fin.x() < x) {
            sum.add(fin.x() - x, fin.z() - z, new Vec3(0, rear.finForce(), 0), new Vec3(0, 0, rear.finMoment()));
        }
        return sum.load();
    }

    /** Where the boom leaves the pod and carries most [m]. */
    public double frontX() {
        return masses.frontX();
    }

    /** Mass of the boom and all it carries [kg]. */
    public double mass() {
        return masses.total();
    }

    /** CG of the whole glider, build axes [m]. */
    Vec3 cg() {
        return cg;
    }

    /** Where the air acts on the tailplane, build axes [m]. */
    Vec3 tailplane() {
        return tailplane;
    }

    /** Where the air acts on the fin, build axes [m]. */
    Vec3 fin() {
        return fin;
    }

    Glider glider() {
        return glider;
    }
}
