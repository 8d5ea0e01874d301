package org.sawfly.section;

/** Lift, drag and moment of a section over angle, Reynolds number and flap angle; smooth over the whole circle. */
public interface Section {
    /**
     * Fills {@code out} with cl, cd and cm about the quarter chord.
     *
     * @param alpha angle of attack, anywhere on the circle [rad]
     * @param reynolds Reynolds number on the chord [1]
     * @param flap flap angle, trailing edge down positive [rad]
     * @param out cl, cd, cm, at least three long
     */
    void at(double alpha, double reynolds, double flap, double[] out);

    /**
     * The same section prepared for many angles at one Reynolds number and flap angle: what it answers at that condition
     * is the same, faster where preparing pays.
     */
    default Section prepared(double reynolds, double flap) {
        return this;
    }
}
