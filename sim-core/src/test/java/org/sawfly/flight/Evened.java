package org.sawfly.flight;

import org.sawfly.aero.AeroEvaluator;
import org.sawfly.aero.AeroModel;
import org.sawfly.aero.Loads;
import org.sawfly.aero.Motion;
import org.sawfly.aero.Reference;
import org.sawfly.glider.MassProperties;
import org.sawfly.math.Inertia;
import org.sawfly.math.Vec3;

/** A model whose sideways forces are the half sum of those of a motion and of its mirror image: as if it had no peg. */
record Evened(AeroModel model) implements AeroModel {
    /** A craft without anything that tells left from right. */
    static Craft of(Craft c) {
        Inertia i = c.mass().inertia();
        Vec3 cg = c.mass().cg();
        MassProperties even = new MassProperties(
                c.mass().mass(), new Vec3(cg.x(), 0, cg.z()), new Inertia(i.ixx(), i.iyy(), i.izz(), 0, i.ixz(), 0));
        return new Craft(
                c.glider(), even, new Evened(c.model()), c.deflections(), c.cruise(), c.cruiseCamber(), c.power());
    }

    @Override
    public AeroEvaluator evaluator() {
        AeroEvaluator evaluator = model.evaluator();
        Motion mirrored = new Motion();
        Loads other = new Loads();
        return new AeroEvaluator() {
            @Override
            public void evaluate(Motion m, Loads loads) {
                mirror(m, mirrored);
                evaluator.evaluate(mirrored, other);
                evaluator.evaluate(m, loads);
                loads.fx = (loads.fx + other.fx) / 2;
                loads.fy = (loads.fy - other.fy) / 2;
                loads.fz = (loads.fz + other.fz) / 2;
                loads.mx = (loads.mx - other.mx) / 2;
                loads.my = (loads.my + other.my) / 2;
                loads.mz = (loads.mz - other.mz) / 2;
            }

            @Override
            public double settledDownwash(Motion m) {
                return evaluator.settledDownwash(m);
            }
        };
    }

    private static void mirror(Motion m, Motion to) {
        to.u = m.u;
        to.v = -m.v;
        to.w = m.w;
        to.p = -m.p;
        to.q = m.q;
        to.r = -m.r;
        to.density = m.density;
        to.kinematicViscosity = m.kinematicViscosity;
        to.gx = m.gx;
        to.gy = -m.gy;
        to.gz = m.gz;
        to.heldY = -m.heldY;
        to.elevator = m.elevator;
        to.camber = m.camber;
        to.aileron = -m.aileron;
        to.rudder = -m.rudder;
        to.downwashLag = m.downwashLag;
    }

    @Override
    public Reference reference() {
        return model.reference();
    }

    @Override
    public double[][] apparentMass() {
        return model.apparentMass();
    }
}
