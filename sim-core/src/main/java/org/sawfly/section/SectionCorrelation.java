package org.sawfly.section;

/**
 * Numbers of the correlation behind {@link SectionEstimate}. Fitted by least squares to measured low-speed sections of 5 to
 * 10 % thickness and up to 4 % camber (University of Illinois low-speed airfoil tests); the fit program among the tests
 * finds them anew. Percentages are of chord, angles in degrees, L = ln(Re/100 000).
 */
final class SectionCorrelation {
    /** Indices of the numbers for lift. */
    enum Lift {
        /** Factor on the zero-lift angle of theory. */
        ZERO_LIFT,
        /** Slope before the stall weight is applied [1/rad]. */
        SLOPE,
        /** Lift lost over the long bubble at low angles, at L = 0 [1], and its growth towards low Re. */
        LOSS,
        LOSS_RE,
        /** Angle above which the bubble closes at L = 0 [deg], its fall with L, and the width of the change [deg]. */
        CLOSE,
        CLOSE_RE,
        CLOSE_WIDTH,
        /** Middle of the stall [deg] at 2.5 % camber and 8.5 % thickness, L = 0; per % camber, % thickness, and L. */
        STALL,
        STALL_CAMBER,
        STALL_THICKNESS,
        STALL_RE,
        /** Width of the stall [deg]. */
        STALL_WIDTH
    }

    /** Indices of the numbers for drag. */
    enum Drag {
        /** Least drag over laminar friction at 2 % camber and 8.5 % thickness, L = 0; per %, per %, and exponent of Re. */
        FRICTION,
        FRICTION_THICKNESS,
        FRICTION_CAMBER,
        FRICTION_RE,
        /** Logarithm of the drag of the bubble at L = 0, exponent of Re, lift where it is worst (and per % camber), width. */
        BUBBLE,
        BUBBLE_RE,
        BUBBLE_LIFT,
        BUBBLE_CAMBER,
        BUBBLE_WIDTH,
        /** Drag that goes with lost lift. */
        LOSS,
        /** Middle of the loss of suction at the leading edge [deg] at no camber and 8.5 % thickness; its rise per % camber
         * for suction on the upper and on the lower side, per % thickness, and L; width [deg]. */
        EDGE,
        EDGE_CAMBER,
        EDGE_CAMBER_LOWER,
        EDGE_THICKNESS,
        EDGE_RE,
        EDGE_WIDTH
    }

    /** Indices of the numbers for the moment. */
    enum Moment {
        /** Factor on the moment of theory. */
        THEORY,
        /** Moment of a unit of lost lift. */
        LOSS,
        /** Moment of a unit of attached lift. */
        LIFT
    }

    static final SectionCorrelation FITTED = new SectionCorrelation(
            new double[] {
                0.98689, 6.4488, 0.12146, 0.80535, 1.1742, 3.9443, 1.4497, 12.819, 0.61677, 0.59225, 0.90458, 4.0422
            },
            new double[] {
                1.3524, 0.12867, 0.094708, 0.088472, -5.8066, 1.5680, 0.73680, 0.13432, 0.26394, 0.010278, 13.799,
                3.1230, -3.9446, 4.3925, -1.1114, 3.3623
            },
            new double[] {1.1562, 0.19977, 0.013042});

    private final double[] lift;
    private final double[] drag;
    private final double[] moment;

    SectionCorrelation(double[] lift, double[] drag, double[] moment) {
        if (lift.length != Lift.values().length
                || drag.length != Drag.values().length
                || moment.length != Moment.values().length) {
            throw new IllegalArgumentException("the correlation needs " + Lift.values().length + ", "
                    + Drag.values().length + " and " + Moment.values().length + " numbers");
        }
        this.lift = lift.clone();
        this.drag = drag.clone();
        this.moment = moment.clone();
    }

    double get(Lift which) {
        return lift[which.ordinal()];
    }

    double get(Drag which) {
        return drag[which.ordinal()];
    }

    double get(Moment which) {
        return moment[which.ordinal()];
    }

    double[] lift() {
        return lift.clone();
    }

    double[] drag() {
        return drag.clone();
    }

    double[] moment() {
        return moment.clone();
    }
}
