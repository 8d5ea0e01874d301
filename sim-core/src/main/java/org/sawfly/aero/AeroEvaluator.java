package org.sawfly.aero;

/** Answers for one flight. Not to be shared between threads; allocates nothing. */
public interface AeroEvaluator {
    /** Fills {@code loads} for {@code motion}. */
    void evaluate(Motion motion, Loads loads);

    /** Downwash velocity at the tailplane in steady flight with this motion: the lag state it settles at [m/s]. */
    double settledDownwash(Motion motion);
}
