package org.sawfly.study;

import org.sawfly.flight.Scenario;
import org.sawfly.glider.Glider;

/**
 * What one error of building costs: the same glider, the same throw, the preset counted from the cruise position that the
 * elevator needs now. Both directions are flown and the worse counts. NaN where a flight has no settled height.
 *
 * @param error which
 * @param amount its size [rad], for a balance [m]
 * @param height change of the settled launch height, the worse direction [m]
 * @param sink change of the least sink, the worse direction [m/s]
 * @param elevatorDown what the elevator's trailing edge has to go down in cruise for the positive direction [m]
 * @param swing change of the first swing, the direction that swings further [rad]
 */
public record Tolerance(
        BenchError error, double amount, double height, double sink, double elevatorDown, double swing) {
    /**
     * The cost of an error.
     *
     * @param result the answer of the scenario, built squarely
     * @param amount size of the error, above 0 [rad], for a balance [m]
     */
    public static Tolerance of(Workbench bench, Scenario scenario, Result result, BenchError error, double amount) {
        return new Squareness(bench, scenario, result).of(error, amount);
    }

    static Tolerance of(
            BenchError error, double amount, Squareness.Built square, Squareness.Built one, Squareness.Built other) {
        return new Tolerance(
                error,
                amount,
                Math.min(one.height(), other.height()) - square.height(),
                Math.max(one.sink(), other.sink()) - square.sink(),
                one.elevatorDown() - square.elevatorDown(),
                Math.max(one.swing(), other.swing()) - square.swing());
    }

    /** What a ruler reads for this size on this glider [m]. */
    public double reading(Glider glider) {
        return error.length(glider) * amount;
    }
}
