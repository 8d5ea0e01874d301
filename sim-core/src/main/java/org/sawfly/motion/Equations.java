package org.sawfly.motion;

/** A system of ordinary differential equations. */
public interface Equations {
    /** How many there are. */
    int size();

    /**
     * Writes the time derivative of a state.
     *
     * @param t time [s]
     * @param state where the system is; not changed
     * @param rates where to write
     */
    void derivatives(double t, double[] state, double[] rates);
}
