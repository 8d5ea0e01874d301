package org.sawfly.aero;

import org.sawfly.math.Vec3;

/**
 * Scratch of one {@link Element}: its own velocities, and the force and moment that follow. Nothing divides by speed.
 *
 * <p>Velocity of the reference point {@code v + omega x r} less the velocity of the air there; its component against lift
 * is taken at the quarter chord for the direction of lift (w_1) and at the three-quarter chord for the angle (w_3), as
 * lifting-surface theory has it (Pistolesi's theorem). With {@code V_1^2 = u^2 + w_1^2}, {@code V_3^2 = u^2 + w_3^2}:
 *
 * <ul>
 *   <li>angle {@code alpha = atan2(w_3, u)} plus whatever turns the surface or its flap;
 *   <li>circulation {@code V_3 c CL/2}; lift by Kutta and Joukowski with the velocity at the bound vortex, hence
 *       {@code (rho/2) S V_3 [CL (w_1, -u) - CDi (u, w_1)]} along (x, down);
 *   <li>section drag along the full velocity V: {@code -(rho/2) S [cd V_1 + c_f (V - V_1)] V}, where the part with the
 *       speed along the span is skin friction alone, {@code c_f = 2 x 1.328/sqrt(V c/nu)} (Blasius 1908), so that it
 *       stays defined when the wind blows along the span;
 *   <li>section moment {@code (rho/2) S c Cm V_1 V_3}, and that of the angle changing along a turning chord,
 *       {@code -(pi/16) rho V_1 (omega.axis) integral c^3 ds}, which is {@code -(pi/8)(omega.axis) c/V} in cm (Munk's
 *       apparent camber; Etkin and Reid, Dynamics of Flight, 3rd ed. 1996, section 5.4).
 * </ul>
 */
final class ElementFlow {
    /** Keeps a ratio of speeds defined at rest [m/s]. */
    private static final double TINY = 1e-12;
    /** Two sides of a plate in laminar flow, Blasius: 2 x 1.328. */
    private static final double SKIN = 2.656;

    private static final int LIFT = Loss.LIFT.ordinal();

    private final Element element;
    private final double inducedFactor;
    private final double dragFactor;
    private final double rx;
    private final double ry;
    private final double rz;
    private final double downY;
    private final double downZ;
    private final double axisY;
    private final double axisZ;
    private final CoefficientGrid.Lookup lookup = new CoefficientGrid.Lookup();
    private final double[] c = new double[CoefficientGrid.CHANNELS];
    private final double[] held = new double[7];

    /** Velocity of the reference point, body axes [m/s]; and less that of the air there. */
    private double kinematicU, kinematicV, kinematicW;

    private double u, v, w;
    /** Components against lift at the quarter and the three-quarter chord [m/s]; squares of V_1, V_3 [m2/s2]. */
    double w1, w3, square1, square3;
    /** u at the reference point [m/s]. */
    double forward;

    private double spin;
    private double speed1, speed3, speed, angleOfFlow, speedPlace, friction;

    /** Angle of attack of the last force [rad]. */
    double alpha;
    /** V_3 CL [m/s]: twice the circulation over the chord. */
    double circulation;
    /** Force of lift and section drag, body axes [N]; moment about the element's axis [N m]. */
    double liftX, liftY, liftZ, dragX, dragY, dragZ, moment;

    /**
     * Scratch for an element.
     *
     * @param inducedFactor on the drag that comes with lift [1]
     * @param dragFactor on section drag [1]
     */
    ElementFlow(Element element, double inducedFactor, double dragFactor) {
        this.element = element;
        this.inducedFactor = inducedFactor;
        this.dragFactor = dragFactor;
        Vec3 r = element.place();
        this.rx = r.x();
        this.ry = r.y();
        this.rz = r.z();
        this.downY = element.down().y();
        this.downZ = element.down().z();
        this.axisY = element.axis().y();
        this.axisZ = element.axis().z();
    }

    /**
     * Takes the motion; the air at the place moves with (0, airY, airZ).
     *
     * @param airY velocity of the air, right positive [m/s]
     * @param airZ velocity of the air, down positive [m/s]
     */
    void move(Motion m, double airY, double airZ) {
        kinematicU = m.u + m.q * rz - m.r * ry;
        kinematicV = m.v + m.r * rx - m.p * rz;
        kinematicW = m.w + m.p * ry - m.q * rx;
        u = kinematicU;
        v = kinematicV - airY;
        w = kinematicW - airZ;
        forward = u;
        spin = m.q * axisY + m.r * axisZ;
        w1 = v * downY + w * downZ;
        w3 = w1 + 0.5 * element.chord() * spin;
        square1 = u * u + w1 * w1;
        square3 = u * u + w3 * w3;
    }

    /**
     * What does not depend on turning the surface: called once after {@link #move}, before any {@link #load}.
     *
     * @param viscosityRatio kinematic viscosity of the tables over that of the air [1]
     */
    void flow(Motion m, double viscosityRatio) {
        speed1 = Math.sqrt(square1);
        speed3 = Math.sqrt(square3);
        speed = Math.sqrt(u * u + v * v + w * w);
        angleOfFlow = Math.atan2(w3, u);
        speedPlace = SurfaceKnots.speedPlace(square3 * viscosityRatio * viscosityRatio);
        double skin = SKIN * Math.sqrt(m.kinematicViscosity * speed / element.chord());
        friction = skin * (1 - speed1 / Math.max(speed, TINY));
    }

    /** {@code V_3 sin(2 x)/2} with x the angle of the flow and a small shift, see {@link StripFlow} [m/s]. */
    double lifting(double shift) {
        double along = u - w3 * shift;
        return along * (w3 + u * shift) / Math.max(speed3, TINY);
    }

    /** What sideslip adds to the velocity against lift of a surface that is not level [m/s]. */
    double sideways() {
        return v * downY;
    }

    /** Angle of the flow at the three-quarter chord [rad]. */
    double angleOfFlow() {
        return angleOfFlow;
    }

    /**
     * Force and moment with the surface turned by {@code shift} towards more lift.
     *
     * @param shift added to the angle of attack [rad]
     * @param flap flap angle asked of the table [rad]
     * @param liftFactor on lift and what it induces [1]
     */
    void load(double density, double shift, double flap, double liftFactor) {
        alpha = angleOfFlow + shift;
        element.table().flow(speedPlace, flap, lookup);
        element.table().at(alpha, lookup, c);
        double half = 0.5 * density * element.area();
        double lift = half * speed3 * liftFactor * c[CoefficientGrid.LIFT];
        double induced = half * speed3 * liftFactor * inducedFactor * c[CoefficientGrid.INDUCED];
        circulation = speed3 * liftFactor * c[CoefficientGrid.LIFT];
        liftX = lift * w1 - induced * u;
        double normal = -lift * u - induced * w1;
        liftY = normal * downY;
        liftZ = normal * downZ;
        double drag = half * dragFactor * (c[CoefficientGrid.PROFILE] * speed1 + friction);
        dragX = -drag * u;
        dragY = -drag * v;
        dragZ = -drag * w;
        moment = half * element.chord() * c[CoefficientGrid.MOMENT] * speed1 * speed3
                - Math.PI / 16 * density * speed1 * spin * element.cubedChord();
    }

    /** {@code V_3} times another function over the knots of the element's table, at the place of the last load [m/s]. */
    double times(double[] nodes) {
        return speed3 * element.table().at(nodes, lookup);
    }

    /** Holds the last load for {@link #extrapolate}. */
    void hold() {
        held[0] = liftX;
        held[1] = liftY;
        held[2] = liftZ;
        held[3] = dragX;
        held[4] = dragY;
        held[5] = dragZ;
        held[6] = moment;
    }

    /**
     * Goes on along the line from the held load to the last one.
     *
     * @param further beyond the last load, over the way from the held one to it [1]
     */
    void extrapolate(double further) {
        liftX += further * (liftX - held[0]);
        liftY += further * (liftY - held[1]);
        liftZ += further * (liftZ - held[2]);
        dragX += further * (dragX - held[3]);
        dragY += further * (dragY - held[4]);
        dragZ += further * (dragZ - held[5]);
        moment += further * (moment - held[6]);
    }

    /** Force of lift and drag to the right [N]. */
    double forceY() {
        return liftY + dragY;
    }

    /** Force of lift and drag downwards [N]. */
    double forceZ() {
        return liftZ + dragZ;
    }

    /** Force of lift and drag against positive lift [N]. */
    double forceDown() {
        return (liftY + dragY) * downY + (liftZ + dragZ) * downZ;
    }

    /**
     * Adds force, moment about the CG and the power taken out of the motion.
     *
     * @param profile where the power of section drag and section moment goes
     */
    void addTo(Loads loads, Motion m, Loss profile) {
        double fx = liftX + dragX;
        double fy = liftY + dragY;
        double fz = liftZ + dragZ;
        loads.fx += fx;
        loads.fy += fy;
        loads.fz += fz;
        loads.mx += ry * fz - rz * fy;
        loads.my += rz * fx - rx * fz + moment * axisY;
        loads.mz += rx * fy - ry * fx + moment * axisZ;
        loads.power[LIFT] -= liftX * kinematicU + liftY * kinematicV + liftZ * kinematicW;
        loads.power[profile.ordinal()] -= dragX * kinematicU + dragY * kinematicV + dragZ * kinematicW + moment * spin;
    }
}
