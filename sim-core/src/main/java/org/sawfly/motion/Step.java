package org.sawfly.motion;

/** One accepted step with its dense output. Valid only during the call it is handed to. */
public interface Step {
    /** Where it begins [s]. */
    double start();

    /** Where it ends [s]. */
    double end();

    /** Writes the state at a time within the step. */
    void at(double t, double[] state);
}
