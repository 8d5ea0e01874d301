package org.sawfly.aero;

/**
 * Scratch of a tail on a bending boom: its angle from flap, incidence and bending, and the force that follows.
 *
 * <p>With D the tail's force against its positive lift, M its moment, x its place (negative behind the CG) and, along the
 * same axis as D, a the specific force there, the bending towards positive lift is
 * {@code theta = -theta_F D - theta_M M + theta_f a} and {@code a = a_rest + D (1/m + x^2/I) - M x/I}: the tail's own force
 * counts in the acceleration it feels. The angle of attack is the flow's plus incidence less theta, plus the flap of
 * a tail that turns as a whole. Solved
 * with one secant step: the force at no bending and at the bending that the slope of attached flow gives are joined by a
 * line, which gives bending and force. So the result is a smooth function of the motion.
 */
final class TailFlow {
    /** Square of a bending below which the secant gives way to the attached slope [rad2]. */
    private static final double SMALL = 1e-6;
    /** Least slope of the residual [1]; attached flow has more than 1. */
    private static final double LEAST_SLOPE = 0.3;
    /** Sine beyond stall over which the factor on lift comes in [1]. */
    private static final double STALL_WIDTH = 0.1;

    final ElementFlow flow;
    private final Tail tail;
    private double incidence;
    private double flap;

    /** Bending towards positive lift [rad]. */
    double bending;

    TailFlow(Tail tail, double inducedFactor, double dragFactor) {
        this.tail = tail;
        this.flow = new ElementFlow(tail.element(), inducedFactor, dragFactor);
    }

    /**
     * Solves the bending after {@code flow.move}, leaving the loads in {@link #flow}.
     *
     * @param flapAngle flap angle towards more lift [rad]
     * @param restAcceleration specific force at the tail against positive lift without the tail's own force [m/s2]
     * @param perForce acceleration at the tail per force there, 1/m + x^2/I [1/kg]
     * @param perMoment x/I [1/(kg m)]
     */
    void solve(
            Motion m,
            double flapAngle,
            double viscosityRatio,
            double restAcceleration,
            double perForce,
            double perMoment) {
        flow.flow(m, viscosityRatio);
        flap = tail.allMoving() ? 0 : flapAngle;
        incidence = tail.incidence() + (flapAngle - flap);
        BoomFlex flex = tail.flex();
        double forceSlope = flex.force() - flex.inertia() * perForce;
        double momentSlope = flex.moment() + flex.inertia() * perMoment;
        double constant = flex.inertia() * restAcceleration;
        double attached = 1
                + forceSlope
                        * 0.5
                        * m.density
                        * tail.element().area()
                        * tail.slope()
                        * tail.liftFactor()
                        * Math.sqrt(flow.square1 * flow.square3);
        attached = Math.max(attached, LEAST_SLOPE);
        load(m, 0);
        double start = constant - forceSlope * flow.forceDown() - momentSlope * flow.moment;
        double first = start / attached;
        flow.hold();
        load(m, first);
        double residual = first - constant + forceSlope * flow.forceDown() + momentSlope * flow.moment;
        double slope = ((residual + start) * first + SMALL * attached) / (first * first + SMALL);
        double further = -residual / Math.max(slope, LEAST_SLOPE);
        flow.extrapolate(further * first / (first * first + SMALL));
        flow.alpha -= further;
        bending = first + further;
    }

    private void load(Motion m, double theta) {
        double turn = incidence - theta;
        double factor = tail.liftFactor();
        if (tail.beyondStall() != 1) {
            double deep = (Math.abs(Math.sin(flow.angleOfFlow() + turn)) - tail.stallSine()) / STALL_WIDTH;
            double t = Math.min(Math.max(deep, 0), 1);
            factor *= 1 + (tail.beyondStall() - 1) * t * t * t * (10 - t * (15 - 6 * t));
        }
        flow.load(m.density, turn, flap, factor);
    }
}
