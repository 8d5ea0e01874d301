package org.sawfly.study.log;

import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** What a log of one launch ought to look like. */
public interface ThrowModel {
    /**
     * Something the fit holds though it is not known, because a log cannot tell it from what is fitted.
     *
     * @param words what it is
     * @param deviation standard deviation of what it may be off by
     */
    record Held(String words, double deviation) {}

    /** What is held. */
    List<Held> held();

    /**
     * Height above the ground [m] over the time after release [s], defined for every time from 0 on.
     *
     * @param speed at release [m/s]
     * @param drag factor on drag [1]
     * @param off how far each of {@link #held()} is off
     */
    DoubleUnaryOperator flight(double speed, double drag, double[] off);
}
