package org.sawfly.study;

/**
 * How much one error of building matters.
 *
 * @param error which
 * @param length over which a ruler finds an angle [m]; 1 for a balance
 * @param perMillimetre what 1 mm on the ruler costs
 * @param perDegree what 1 degree costs; null for a balance
 * @param costsHeight size that has the wanted cost in launch height [rad or m]; infinite when no size looked at has it
 * @param costsSink the same for the sink
 */
public record Sensitivity(
        BenchError error,
        double length,
        Tolerance perMillimetre,
        Tolerance perDegree,
        double costsHeight,
        double costsSink) {
    /** On the ruler [m]. */
    public double heightReading() {
        return length * costsHeight;
    }

    /** On the ruler [m]. */
    public double sinkReading() {
        return length * costsSink;
    }

    /** As an angle [rad]; NaN for a balance. */
    public double heightAngle() {
        return error.isAngle() ? costsHeight : Double.NaN;
    }
}
