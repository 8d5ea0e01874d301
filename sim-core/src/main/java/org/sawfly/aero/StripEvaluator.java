package org.sawfly.aero;

import org.sawfly.aero.StripModel.Parts;
import org.sawfly.math.SmoothStep;
import org.sawfly.math.Vec3;

/** Scratch of the strip model for one flight. Order: wing, bodies, then both tails with the boom's bending. */
final class StripEvaluator implements AeroEvaluator {
    private static final double TINY = 1e-12;
    /** Speed below which the downwash's way to the tail takes no longer, to the fourth power [m4/s4]. */
    private static final double SLOWEST_4 = 16;
    /** Share of the speed in the wing's plane, below which the wake begins to miss the tails [1]. */
    static final double ALONG = 0.5;

    private static final int LIFT = Loss.LIFT.ordinal();

    private final Parts parts;
    private final StripFlow wing;
    private final StripFlow tails;
    private final StripBending tailplane;
    private final StripBending fin;
    private final double[] wake;

    StripEvaluator(Parts parts) {
        this.parts = parts;
        DragFactors drag = parts.corrections().drag();
        this.wing = new StripFlow(parts.wing(), parts.cg(), drag.induced(), drag.wing());
        this.tails = new StripFlow(parts.tails(), parts.cg(), drag.induced(), drag.tails());
        this.tailplane =
                new StripBending(parts.tailplane(), tails, parts.corrections().tailSlope());
        this.fin = new StripBending(parts.fin(), tails, parts.corrections().tailSlope());
        this.wake = new double[parts.wake().size()];
        double twist = 0.5 * parts.corrections().bench().wingTwist();
        for (int i = 0; i < wing.count; i++) {
            wing.turn[i] = i < wing.count / 2 ? -twist : twist;
        }
    }

    @Override
    public double settledDownwash(Motion m) {
        solveWing(m);
        return downwash(m);
    }

    @Override
    public void evaluate(Motion m, Loads loads) {
        loads.clear();
        solveWing(m);
        wing.finish();
        wing.addTo(loads, m, 0, wing.count, Loss.WING_PROFILE);
        parts.bodies().addTo(m, loads);

        double now = downwash(m);
        double square = m.u * m.u + m.v * m.v + m.w * m.w;
        double carried = Math.sqrt(Math.sqrt(square * square + SLOWEST_4));
        loads.downwashLagRate =
                (now - m.downwashLag) * carried / parts.tailplane().arm();

        bend(m);
        tails.move(m, m.downwashLag - now);
        solveTails(m, loads);
        tails.finish();
        addTails(m, loads);

        double shifted = loads.fz * parts.corrections().neutralPointBack();
        loads.my += shifted;
        loads.power[LIFT] -= shifted * m.q;

        loads.boomUp = tailplane.bending;
        loads.boomRight = fin.bending;
        int middle = wing.count / 2;
        loads.wingAngle = Math.max(
                Math.abs(wing.mean(wing.alpha, 0, middle)), Math.abs(wing.mean(wing.alpha, middle, wing.count)));
        loads.finAngle =
                Math.abs(tails.mean(tails.alpha, parts.fin().from(), parts.fin().to()));
    }

    /** Both tails, and what they load the boom with: what they add to force and moment, taken to their own place. */
    private void addTails(Motion m, Loads loads) {
        StripTail tail = parts.tailplane();
        double force = loads.fz;
        double drag = loads.fx;
        double moment = loads.my;
        tails.addTo(loads, m, tail.from(), tail.to(), Loss.TAILPLANE_PROFILE);
        Vec3 place = tail.place();
        force = loads.fz - force;
        loads.tailplaneForce = force;
        loads.tailplaneMoment = loads.my - moment + place.x() * force - place.z() * (loads.fx - drag);

        tail = parts.fin();
        force = loads.fy;
        moment = loads.mz;
        tails.addTo(loads, m, tail.from(), tail.to(), Loss.FIN_PROFILE);
        force = loads.fy - force;
        loads.finForce = force;
        loads.finMoment = loads.mz - moment - tail.place().x() * force;
    }

    private void solveWing(Motion m) {
        int middle = wing.count / 2;
        for (int i = 0; i < wing.count; i++) {
            wing.flap[i] = i < middle ? m.camber + m.aileron : m.camber - m.aileron;
        }
        wing.move(m, 0);
        wing.start(m.kinematicViscosity);
        wing.pass();
        wing.pass();
    }

    /** Puts the wing's wake at the tail strips and answers its mean downwash at the tailplane [m/s]. */
    private double downwash(Motion m) {
        double sideways = m.v - 0.5 * m.r * parts.tailplane().arm();
        double level2 = m.u * m.u + sideways * sideways;
        double share = Math.sqrt(level2 / (level2 + m.w * m.w + TINY)) / ALONG;
        double fade = SmoothStep.at(share);
        parts.wake().velocities(Math.atan2(sideways, m.u), wing.gamma, wake);
        for (int i = 0; i < tails.count; i++) {
            tails.otherBehind[i] = fade * wake[i];
            tails.otherQuarter[i] = fade * wake[tails.count + i];
        }
        return -tails.mean(
                tails.otherBehind, parts.tailplane().from(), parts.tailplane().to());
    }

    private void bend(Motion m) {
        if (tailplane.swings(m)) {
            tailplane.swing(m.elevator, m.boomUp, m.boomUpRate);
        } else {
            tailplane.reset(m.elevator);
        }
        if (fin.swings(m)) {
            fin.swing(m.rudder, m.boomRight, m.boomRightRate);
        } else {
            fin.reset(m.rudder);
        }
    }

    private void solveTails(Motion m, Loads rest) {
        boolean up = tailplane.swings(m);
        boolean right = fin.swings(m);
        tails.start(m.kinematicViscosity);
        Inertial inertial = parts.inertial();
        tailplane.begin(
                m.density,
                inertial.verticalAcceleration(m, rest, parts.tailplane().place()),
                inertial.verticalMass(m),
                inertial.pitching(m));
        fin.begin(
                m.density,
                -m.heldY - inertial.sideAcceleration(m, rest, parts.fin().place()),
                inertial.sideMass(m),
                inertial.yawing(m));
        if (!up) {
            tailplane.start(m.density);
        }
        if (!right) {
            fin.start(m.density);
        }
        tails.pass();
        if (!up) {
            tailplane.correct(m.density);
        }
        if (!right) {
            fin.correct(m.density);
        }
        tails.pass();
        fin.weaken();
        if (up) {
            rest.boomUpAcceleration = tailplane.acceleration(m.density, m.boomUpRate);
        }
        if (right) {
            rest.boomRightAcceleration = fin.acceleration(m.density, m.boomRightRate);
        }
    }
}
