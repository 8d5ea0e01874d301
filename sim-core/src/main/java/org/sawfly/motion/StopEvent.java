package org.sawfly.motion;

/** Something that ends a run: the root of a smooth function of time and state, crossed in a direction. */
public interface StopEvent {
    /** Which crossings count. */
    enum Crossing {
        /** From negative to positive. */
        RISING,
        /** From positive to negative. */
        FALLING
    }

    /** The function whose root ends the run. */
    double value(double t, double[] state);

    /** The crossing that counts. */
    Crossing crossing();

    /** True when the values before and after stand on the two sides of a crossing that counts. */
    default boolean crossed(double before, double after) {
        return switch (crossing()) {
            case RISING -> before < 0 && after >= 0;
            case FALLING -> before > 0 && after <= 0;
        };
    }
}
