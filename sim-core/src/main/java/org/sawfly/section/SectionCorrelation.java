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
                0.98595, 6.4511, 0.12072, 0.80976, 1.1782, 3.9468, 1.4492, 12.817, 0.61740, 0.59237, 0.90457, 4.0430
            },
            new double[] {
                1.3507, 0.12881, 0.094060, 0.089782, -5.8033, 1.5664, 0.73760, 0.13372, 0.26376, 0.010701, 13.725,
                3.1317, -3.9190, 4.4878, -1.1058, 3.3506
            },
            new double[] {1.1555, 0.19999, 0.012987});

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
