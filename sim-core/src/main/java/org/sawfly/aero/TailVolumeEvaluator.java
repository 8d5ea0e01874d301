package org.sawfly.aero;

import org.sawfly.aero.TailVolumeModel.Parts;
import org.sawfly.air.Atmosphere;
import org.sawfly.math.CubicGrid1;
import org.sawfly.math.SmoothStep;
import org.sawfly.math.Vec3;

/** Scratch of the fast model for one flight. Order: wing halves, bodies, tailplane on its boom, fin on its boom. */
final class TailVolumeEvaluator implements AeroEvaluator {
    /** Added to squares of speeds before a division [m2/s2]. */
    private static final double TINY = 1e-12;
    /** Speed below which an angle from two velocities fades [m/s]; 0.2, its square. */
    private static final double SLOW_2 = 0.04;
    /** Speed below which the downwash's way to the tail takes no longer, to the fourth power [m4/s4]. */
    private static final double SLOWEST_4 = 16;

    private static final double VISCOSITY = Atmosphere.STANDARD.kinematicViscosity(0);
    private static final int LIFT = Loss.LIFT.ordinal();

    private final Parts parts;
    private final ElementFlow right;
    private final ElementFlow left;
    private final TailFlow tailplane;
    private final TailFlow fin;

    /** V CL of the wing, and half the difference right less left: what sideslip makes of it, and the rest [m/s]. */
    private double even, side, turning;

    /** Camber and the angle of no lift that goes with it [rad]. */
    private double camber = Double.NaN;

    private double zeroLift;

    private final double[] wake = new double[WingWake.LOADS];

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

    /**
     * Both halves. What turns the circulation of a half is {@code b = V (alpha - alpha0)}; of the difference of the two the part that
     * sideslip makes counts by the odd ratio and the rest, which turning makes, by the turning ratio. Flap angles that
     * differ count by the odd ratio.
     */
    private void wing(Motion m, double viscosityRatio) {
        right.move(m, 0, 0);
        left.move(m, 0, 0);
        right.flow(m, viscosityRatio);
        left.flow(m, viscosityRatio);
        TailVolumeModel.WingHalves wing = parts.wing();
        double ratio = wing.oddRatio();
        if (m.camber != camber) {
            camber = m.camber;
            zeroLift = wing.zeroLift().value(camber);
        }
        double difference = 0.5 * (right.lifting(-zeroLift) - left.lifting(-zeroLift));
        double middle2 = 0.5 * (right.square3 + left.square3);
        double sideways = right.sideways() * m.u / Math.sqrt(middle2 + TINY);
        double lost = (1 - ratio) * sideways + (1 - wing.turningRatio()) * (difference - sideways);
        double uneven = ratio * wing.twist();
        double lostRight = lost / Math.sqrt(right.square3 + SLOW_2);
        double lostLeft = lost / Math.sqrt(left.square3 + SLOW_2);
        right.load(m.density, uneven - lostRight, m.camber - ratio * m.aileron, 1);
        left.load(m.density, lostLeft - uneven, m.camber + ratio * m.aileron, 1);
        even = 0.5 * (right.circulation + left.circulation);
        side = wing.slope() * ratio * sideways;
        turning = 0.5 * (right.circulation - left.circulation) - side;
    }

    private double downwash(Motion m) {
        Wash wash = parts.wash();
        double spread = 0.5 * (right.times(wash.spread()) + left.times(wash.spread()));
        return parts.corrections().downwash() * drifted(m, wash.tailplane(), wash.tailplaneArm(), even + spread);
    }

    private double sidewash(Motion m) {
        Wash wash = parts.wash();
        return drifted(m, wash.fin(), wash.finArm(), even);
    }

    /**
     * Velocity for the wake's drift, the wing's turning half way to the tail included; none when the tail leads. Fades as in
     * {@link StripEvaluator} where the wake goes off across the wing's plane.
     */
    private double drifted(Motion m, CubicGrid1 byDrift, double arm, double level) {
        if (m.u <= 0) {
            return 0;
        }
        double sideways = m.v - 0.5 * m.r * arm;
        double along2 = m.u * m.u + sideways * sideways;
        byDrift.at(sideways / Math.sqrt(along2 + TINY), wake);
        double drifted = level * wake[WingWake.EVEN] + side * wake[WingWake.SIDE] + turning * wake[WingWake.TURNING];
        double all2 = along2 + m.w * m.w + TINY;
        if (along2 >= StripEvaluator.ALONG * StripEvaluator.ALONG * all2) {
            return drifted;
        }
        return SmoothStep.at(Math.sqrt(along2 / all2) / StripEvaluator.ALONG) * drifted;
    }

    private static double magnitude(double alpha) {
        double turned = Math.abs(alpha);
        return turned > Math.PI ? 2 * Math.PI - turned : turned;
    }
}
