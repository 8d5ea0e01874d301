package org.sawfly.aero;

import org.sawfly.aero.TailVolumeModel.Parts;
import org.sawfly.air.Atmosphere;
import org.sawfly.math.CubicGrid1;
import org.sawfly.math.Vec3;

/** Scratch of the fast model for one flight. Order: wing halves, bodies, tailplane on its boom, fin on its boom. */
final class TailVolumeEvaluator implements AeroEvaluator {
    /** Added to squares of speeds before a division [m2/s2]. */
    private static final double TINY = 1e-12;
    /** Speed below which the downwash's way to the tail takes no longer, to the fourth power [m4/s4]. */
    private static final double SLOWEST_4 = 16;

    private static final double VISCOSITY = Atmosphere.STANDARD.kinematicViscosity(0);
    private static final int LIFT = Loss.LIFT.ordinal();

    private final Parts parts;
    private final ElementFlow right;
    private final ElementFlow left;
    private final TailFlow tailplane;
    private final TailFlow fin;

    /** V CL of the wing, and half the difference right less left [m/s]. */
    private double even, odd;

    TailVolumeEvaluator(Parts parts) {
        this.parts = parts;
        DragFactors drag = parts.corrections().drag();
        this.right = new ElementFlow(parts.wing().right(), drag.induced(), drag.wing());
        this.left = new ElementFlow(parts.wing().left(), drag.induced(), drag.wing());
        this.tailplane = new TailFlow(parts.tailplane(), drag.induced(), drag.tails());
        this.fin = new TailFlow(parts.fin(), drag.induced(), drag.tails());
    }

    @Override
    public double settledDownwash(Motion m) {
        wing(m, VISCOSITY / m.kinematicViscosity);
        return downwash(m);
    }

    @Override
    public void evaluate(Motion m, Loads loads) {
        double viscosityRatio = VISCOSITY / m.kinematicViscosity;
        loads.clear();
        wing(m, viscosityRatio);
        right.addTo(loads, m, Loss.WING_PROFILE);
        left.addTo(loads, m, Loss.WING_PROFILE);
        parts.bodies().addTo(m, loads);

        double square = m.u * m.u + m.v * m.v + m.w * m.w;
        double carried = Math.sqrt(Math.sqrt(square * square + SLOWEST_4));
        loads.downwashLagRate =
                (downwash(m) - m.downwashLag) * carried / parts.wash().tailplaneArm();

        Inertial inertial = parts.inertial();
        Vec3 place = parts.tailplane().element().place();
        double mass = inertial.verticalMass(m);
        double turning = inertial.pitching(m);
        tailplane.flow.move(m, 0, m.downwashLag);
        tailplane.solve(
                m,
                m.elevator,
                viscosityRatio,
                inertial.verticalAcceleration(m, loads, place),
                1 / mass + place.x() * place.x() / turning,
                place.x() / turning);
        tailplane.flow.addTo(loads, m, Loss.TAILPLANE_PROFILE);
        loads.tailplaneForce = tailplane.flow.forceZ();
        loads.tailplaneMoment = tailplane.flow.moment;

        place = parts.fin().element().place();
        mass = inertial.sideMass(m);
        turning = inertial.yawing(m);
        fin.flow.move(m, sidewash(m), 0);
        fin.solve(
                m,
                -m.rudder,
                viscosityRatio,
                m.heldY + inertial.sideAcceleration(m, loads, place),
                1 / mass + place.x() * place.x() / turning,
                place.x() / turning);
        fin.flow.addTo(loads, m, Loss.FIN_PROFILE);
        loads.finForce = fin.flow.forceY();
        loads.finMoment = -fin.flow.moment;

        double shifted = loads.fz * parts.corrections().neutralPointBack();
        loads.my += shifted;
        loads.power[LIFT] -= shifted * m.q;

        loads.boomUp = tailplane.bending;
        loads.boomRight = -fin.bending;
        loads.wingAngle = Math.max(magnitude(right.alpha), magnitude(left.alpha));
        loads.finAngle = magnitude(fin.flow.alpha);
    }

    /** Both halves: of their two angles the mean counts in full, the difference by the odd ratio; flap angles likewise. */
    private void wing(Motion m, double viscosityRatio) {
        right.move(m, 0, 0);
        left.move(m, 0, 0);
        right.flow(m, viscosityRatio);
        left.flow(m, viscosityRatio);
        double ratio = parts.wing().oddRatio();
        double cross = right.w3 * left.forward - left.w3 * right.forward;
        double carry = (1 - ratio) * cross / (right.square3 + left.square3 + TINY);
        double uneven = ratio * parts.wing().twist() - carry;
        right.load(m.density, uneven, m.camber - ratio * m.aileron, 1, 0, 0);
        left.load(m.density, -uneven, m.camber + ratio * m.aileron, 1, 0, 0);
        even = 0.5 * (right.circulation + left.circulation);
        odd = 0.5 * (right.circulation - left.circulation);
    }

    private double downwash(Motion m) {
        Wash wash = parts.wash();
        return parts.corrections().downwash() * even * drifted(m, wash.tailplane(), wash.tailplaneArm());
    }

    private double sidewash(Motion m) {
        Wash wash = parts.wash();
        double forward = Math.max(m.u, 0);
        double share = forward * forward / (m.u * m.u + m.v * m.v + TINY);
        return even * drifted(m, wash.fin(), wash.finArm()) + odd * share * wash.finOdd();
    }

    /** Value for the wake's drift, the wing's turning half way to the tail included; none when the tail leads. */
    private static double drifted(Motion m, CubicGrid1 byDrift, double arm) {
        if (m.u <= 0) {
            return 0;
        }
        double sideways = m.v - 0.5 * m.r * arm;
        return byDrift.value(sideways / Math.sqrt(m.u * m.u + sideways * sideways + TINY));
    }

    private static double magnitude(double alpha) {
        double turned = Math.abs(alpha);
        return turned > Math.PI ? 2 * Math.PI - turned : turned;
    }
}
