package org.sawfly.section;

import org.sawfly.quantity.Unit;
import org.sawfly.section.SectionCorrelation.Drag;
import org.sawfly.section.SectionCorrelation.Lift;
import org.sawfly.section.SectionCorrelation.Moment;

/**
 * The estimate at one Reynolds number and flap angle; theory/sections.md derives the terms. Symbols: s weight of attached
 * flow, y lift of inviscid flow, L = ln(Re/100 000).
 */
final class SectionPolar {
    static final double REFERENCE_RE = 1e5;
    /** Ends of the Reynolds number, and below 30 000 the terms of the bubble stop growing: nothing measured there. */
    static final double LOWEST = Math.log(0.1);

    static final double HIGHEST = Math.log(10);
    private static final double LOWEST_BUBBLE = Math.log(0.3);
    private static final double SOFT = 0.1;

    /** Camber [%] at which the lost lift of a cambered section is fully there and the dead zone of a symmetric one is gone. */
    private static final double LITTLE_CAMBER = 1.2;
    /**
     * Dead zone of symmetric sections: size [1] at L = 0 and 9 % thickness, growth towards low Re, half width [deg]; NACA 0009
     * measured. It is the flow leaving the thick rear of the section, so it goes with the square of the thickness: a 2 % plate
     * measured in the same tunnel (Selig, Donovan and Fraser, Airfoils at Low Speeds, 1989) has none.
     */
    private static final double DEAD = 0.022;

    private static final double DEAD_THICKNESS = 9;
    private static final double DEAD_RE = 1.3;
    private static final double DEAD_WIDTH = 1.3;
    /**
     * Size at which lift no longer grows with the angle in the middle of the dead zone; it stays at that on thicker sections
     * and at lower Re, where nothing was measured (judged). The power decides how late it bends off.
     */
    private static final double DEAD_MOST = 0.085;

    private static final double DEAD_POWER = 12;

    /**
     * Thinnest section of the fit [%]. Below, the angle at which the leading edge loses its suction falls more slowly by this
     * share: judged, since carried on in full it falls too fast for the one thinner section measured (AG455ct-02r at
     * Re 60 000), whose thickness is known from memory only.
     */
    private static final double THINNER = 0.5;

    private static final double THINNEST = 7;

    /** Angle over which the suction peak changes from one side of the nose to the other [deg]. */
    private static final double SIDE = 1;

    /** Flap: worst share lost at low Re, L of half the loss, width; gives 0.73 at 60 000, 0.9 at 100 000, 0.97 at 150 000. */
    private static final double FLAP_LOSS = 0.5;

    private static final double FLAP_LOSS_MIDDLE = -0.457;
    private static final double FLAP_LOSS_WIDTH = 0.33;
    /** Deflection at which a flap stops gaining [rad]; common practice, no source. */
    private static final double FLAP_LIMIT = Unit.DEGREE.toSi(25);
    /** Fall of the angle of stall for a degree of zero-lift angle turned by a flap; .02 of largest lift a degree, measured. */
    private static final double FLAP_STALL = 0.35;
    /** Share of a flap's lift by which the lift of least drag moves: .045 of .053 a degree, measured on one section. */
    private static final double FLAP_BUCKET = 0.85;
    /** Drag of a deflected flap 1.7 E^1.38 sin^2 (Young, R&M 2622, 1947, from memory), fading in over this angle [rad]. */
    private static final double FLAP_ONSET = Unit.DEGREE.toSi(12);

    private final boolean turned;
    private final double turn;
    private final double slope;
    private final double zeroLift;
    private final double moment;
    private final double loss;
    private final double close;
    private final double closeWidth;
    private final double dead;
    private final double stallUp;
    private final double stallDown;
    private final double stallWidth;
    private final double edgeUp;
    private final double edgeDown;
    private final double edgeWidth;
    private final double friction;
    private final double bubbleUpper;
    private final double bubbleLower;
    private final double bubbleUpperLift;
    private final double bubbleLowerLift;
    private final double bubbleWidth;
    private final double lossDrag;
    private final double lossMoment;
    private final double liftMoment;
    private final double flapDrag;

    SectionPolar(SectionCorrelation c, SectionShape shape, double delay, double reynolds, double flap) {
        double l = between(Math.log(Math.max(reynolds, 1) / REFERENCE_RE), LOWEST, HIGHEST);
        double low = LOWEST_BUBBLE + soften(l - LOWEST_BUBBLE);
        double camber = Unit.PERCENT.fromSi(shape.camber());
        double thickness = Unit.PERCENT.fromSi(shape.thickness());
        double thick = thickness - 8.5;
        double some = Math.tanh(camber / LITTLE_CAMBER);

        this.turned = shape.flapChord() == 1;
        this.turn = turned ? flap : 0;
        boolean hinged = shape.flapChord() > 0 && !turned;
        double deflection = hinged ? FLAP_LIMIT * Math.tanh(flap / FLAP_LIMIT) * flapShare(l) : 0;
        PlainFlap theory = hinged ? PlainFlap.of(shape.flapChord()) : null;
        double shift = hinged ? theory.effectiveness() * deflection : 0;
        double shiftDeg = FLAP_STALL * Unit.DEGREE.fromSi(shift);

        ThinAerofoil line = ThinAerofoil.twoParabolas(shape.camber(), shape.camberPlace());
        this.slope = c.get(Lift.SLOPE);
        this.zeroLift = c.get(Lift.ZERO_LIFT) * line.zeroLift() - shift;
        this.moment = c.get(Moment.THEORY) * line.moment() + (hinged ? theory.momentSlope() * deflection : 0);

        this.loss = c.get(Lift.LOSS) * Math.exp(-c.get(Lift.LOSS_RE) * low) * some;
        this.close = c.get(Lift.CLOSE) - c.get(Lift.CLOSE_RE) * low;
        this.closeWidth = c.get(Lift.CLOSE_WIDTH);
        double size = DEAD * square(thickness / DEAD_THICKNESS) * Math.exp(-DEAD_RE * low) * (1 - some * some);
        this.dead = size / Math.pow(1 + Math.pow(size / DEAD_MOST, DEAD_POWER), 1 / DEAD_POWER);

        double delayDeg = Unit.DEGREE.fromSi(delay);
        double stall = c.get(Lift.STALL) + c.get(Lift.STALL_THICKNESS) * thick + c.get(Lift.STALL_RE) * l + delayDeg;
        double tilt = c.get(Lift.STALL_CAMBER);
        this.stallWidth = c.get(Lift.STALL_WIDTH);
        this.stallUp = floor(stall + tilt * (camber - 2.5) - shiftDeg);
        this.stallDown = floor(stall + tilt * (-camber - 2.5) + shiftDeg);

        double nose = thick + THINNER * soften(THINNEST - thickness);
        double edge = c.get(Drag.EDGE) + c.get(Drag.EDGE_THICKNESS) * nose + c.get(Drag.EDGE_RE) * l + delayDeg;
        double edgeShift = (1 - FLAP_BUCKET) * Unit.DEGREE.fromSi(shift);
        this.edgeWidth = c.get(Drag.EDGE_WIDTH);
        this.edgeUp = floor(edge + c.get(Drag.EDGE_CAMBER) * camber - edgeShift);
        this.edgeDown = floor(edge + c.get(Drag.EDGE_CAMBER_LOWER) * camber + edgeShift);

        double factor = c.get(Drag.FRICTION)
                + c.get(Drag.FRICTION_THICKNESS) * thick
                + c.get(Drag.FRICTION_CAMBER) * (camber - 2);
        this.friction = 2
                * FlatPlateFriction.laminar(REFERENCE_RE * Math.exp(l))
                * Math.exp(c.get(Drag.FRICTION_RE) * l)
                * (0.9 + 0.1 * Math.log1p(Math.exp((factor - 0.9) / 0.1)));
        double flapLift = 2 * Math.PI * shift * FLAP_BUCKET;
        double bubble = Math.exp(c.get(Drag.BUBBLE) - c.get(Drag.BUBBLE_RE) * low) * square(thickness / 8.5);
        this.bubbleUpper = bubble * reach(camber);
        this.bubbleLower = bubble * reach(-camber);
        this.bubbleUpperLift = c.get(Drag.BUBBLE_LIFT) + c.get(Drag.BUBBLE_CAMBER) * (camber - 2.5) + flapLift;
        this.bubbleLowerLift = flapLift - c.get(Drag.BUBBLE_LIFT) + c.get(Drag.BUBBLE_CAMBER) * (camber + 2.5);
        this.bubbleWidth = c.get(Drag.BUBBLE_WIDTH);
        this.lossDrag = c.get(Drag.LOSS);
        this.lossMoment = c.get(Moment.LOSS);
        this.liftMoment = c.get(Moment.LIFT);
        double onset = flap / FLAP_ONSET;
        double sine = Math.sin(flap);
        this.flapDrag =
                hinged ? 1.7 * Math.pow(shape.flapChord(), 1.38) * sine * sine * -Math.expm1(-onset * onset) : 0;
    }

    /** cl, cd and cm at an angle [rad]. */
    void at(double angle, double[] out) {
        double alpha = Math.IEEEremainder(angle + turn, 2 * Math.PI);
        double degrees = Unit.DEGREE.fromSi(alpha);
        double sin = Math.sin(alpha);
        double cos = Math.cos(alpha);
        double inviscid = Math.sin(alpha - zeroLift);
        double y = 2 * Math.PI * inviscid;

        double lost = loss * rise((close - degrees) / closeWidth);
        double x = degrees / DEAD_WIDTH;
        double attached = slope * inviscid - lost - dead * x * Math.exp(0.5 * (1 - x * x));
        double s = rise((stallUp - degrees) / stallWidth) * rise((stallDown + degrees) / stallWidth);

        double edge = rise((degrees - edgeUp) / edgeWidth) * rise(degrees / SIDE)
                + rise((-degrees - edgeDown) / edgeWidth) * rise(-degrees / SIDE);
        double drag = friction + bubbleDrag(y) + lossDrag * lost + Plate.EDGE_LOSS * edge * sin * sin;

        double plate = Plate.NORMAL_FORCE * sin;
        out[0] = s * attached + (1 - s) * plate * cos;
        out[1] = s * drag + (1 - s) * (plate * sin + friction) + flapDrag;
        out[2] = s * (moment + lossMoment * lost + liftMoment * attached) + (1 - s) * Plate.cm(alpha);
    }

    /** Bubbles on the upper and, mirrored, on the lower surface, where camber leaves little of it. */
    private double bubbleDrag(double y) {
        double upper = (y - bubbleUpperLift) / bubbleWidth;
        double lower = (y - bubbleLowerLift) / bubbleWidth;
        return bubbleUpper * Math.exp(-0.5 * upper * upper) + bubbleLower * Math.exp(-0.5 * lower * lower);
    }

    /** Growth of a bubble with camber [%], 1 at 2.5 %, fading to nothing below -1 %. */
    private static double reach(double camber) {
        return square(soften(camber + 1) / 3.5);
    }

    private static double square(double x) {
        return x * x;
    }

    static double flapShare(double l) {
        return 1 - FLAP_LOSS * rise((FLAP_LOSS_MIDDLE - l) / FLAP_LOSS_WIDTH);
    }

    /** From 0 to 1, one half at 0. */
    private static double rise(double x) {
        return 1 / (1 + Math.exp(-x));
    }

    /** Nothing below, the value itself above, smoothly. */
    private static double soften(double x) {
        return x > 40 * SOFT ? x : SOFT * Math.log1p(Math.exp(x / SOFT));
    }

    private static double between(double l, double lowest, double highest) {
        return highest - soften(highest - lowest - soften(l - lowest));
    }

    /** Keeps an angle [deg] at which something sets in above 3 degrees, smoothly: a rounded nose holds as long (judged). */
    private static double floor(double degrees) {
        return 3 + (degrees > 40 ? degrees - 3 : Math.log1p(Math.exp(degrees - 3)));
    }
}
