package org.sawfly.aero;

import org.sawfly.math.SmoothStep;
import org.sawfly.math.Vec3;

/**
 * Scratch for one tail's bending on its boom, solved along with the passes of {@link StripFlow}: with F the tail's lift along its
 * normal, M its section moment, a the specific force there against the normal and x its place, bending towards the normal is
 *
 * <pre>  theta = theta_F F - theta_M M + theta_f a,   a = a_rest - F (1/m + x^2/I) - M x/I</pre>
 *
 * One Newton step with the slope of attached flow after the start and one after the first pass: exact there, smooth
 * everywhere. The surface's angle of attack falls by theta. Where the boom swings ({@link BoomMode}), theta is given and the
 * same loads say what it is drawn to.
 */
final class StripBending {
    /** Sine beyond stall over which the factor on lift comes in [1]. */
    private static final double STALL_WIDTH = 0.1;
    /** Least slope of the residual [1]; attached flow has more than 1. */
    private static final double LEAST_SLOPE = 0.3;

    private final StripTail tail;
    private final StripFlow flow;
    private final double tailSlope;
    private double constant;
    private double forceSlope;
    private double momentSlope;
    private double attached;

    /** Bending towards the normal: up, or right [rad]. */
    double bending;

    StripBending(StripTail tail, StripFlow flow, double tailSlope) {
        this.tail = tail;
        this.flow = flow;
        this.tailSlope = tailSlope;
    }

    /** Whether the boom swings with this tail in a motion. */
    boolean swings(Motion m) {
        return m.boomSwings && tail.boom().swings();
    }

    /**
     * The tail as the boom has swung, before the flow takes the motion.
     *
     * @param flap its angle away from the normal [rad]
     * @param slope of the boom [rad]
     * @param rate of the slope [rad/s]
     */
    void swing(double flap, double slope, double rate) {
        reset(flap);
        bend(slope);
        for (int i = tail.from(); i < tail.to(); i++) {
            flow.heave[i] = tail.boom().travel() * rate;
            flow.nodding[i] = rate;
        }
    }

    /** The tail unbent, its flap at an angle away from the normal [rad], before the flow takes the motion. */
    void reset(double flap) {
        bending = 0;
        for (int i = tail.from(); i < tail.to(); i++) {
            flow.flap[i] = flap;
            flow.turn[i] = tail.incidence();
            flow.heave[i] = 0;
            flow.nodding[i] = 0;
            flow.liftFactors[i] = tailSlope;
        }
    }

    /**
     * After the start, with the tail unbent.
     *
     * @param restAcceleration specific force at the tail against its normal without the tail's own force [m/s2]
     * @param mass that the tail's force accelerates [kg]
     * @param turning inertia that it turns [kg m2]
     */
    void begin(double density, double restAcceleration, double mass, double turning) {
        Vec3 place = tail.place();
        BoomFlex flex = tail.boom().flex();
        forceSlope = flex.force() - flex.inertia() * (1 / mass + place.x() * place.x() / turning);
        momentSlope = flex.moment() + flex.inertia() * place.x() / turning;
        constant = flex.inertia() * restAcceleration;
        double pressure = 0.5 * density * flow.meanSquare(tail.from(), tail.to());
        attached = Math.max(LEAST_SLOPE, 1 + forceSlope * pressure * tail.forceSlope());
    }

    /** First guess, from attached flow. */
    void start(double density) {
        bend((constant + forceSlope * force(density)) / attached);
    }

    /** After a pass. */
    void correct(double density) {
        bend(bending - (bending - settled(density)) / attached);
    }

    /** After the last pass: how the slope goes on [rad/s2]. */
    double acceleration(double density, double rate) {
        return tail.boom().acceleration(settled(density), bending, rate);
    }

    /** Slope under the loads of the moment [rad]. */
    private double settled(double density) {
        double moment = flow.sectionMoment(density, tail.from(), tail.to());
        return constant + forceSlope * force(density) - momentSlope * moment;
    }

    private double force(double density) {
        weaken();
        return flow.force(density, tail.from(), tail.to());
    }

    /** Sets the factor on lift beyond stall, by the angle of each strip. */
    void weaken() {
        if (tail.beyondStall() == 1) {
            return;
        }
        for (int i = tail.from(); i < tail.to(); i++) {
            double deep = (Math.abs(Math.sin(flow.alpha[i])) - tail.stallSine()) / STALL_WIDTH;
            flow.liftFactors[i] = tailSlope * (1 + (tail.beyondStall() - 1) * SmoothStep.at(deep));
        }
    }

    private void bend(double theta) {
        bending = theta;
        for (int i = tail.from(); i < tail.to(); i++) {
            flow.turn[i] = tail.incidence() - theta;
        }
    }
}
