package org.sawfly.flight;

import java.util.Map;
import org.sawfly.aero.Loss;

/**
 * Where the energy of the throw went, from release to the top. Energies in [J]; {@code start} counts from the release
 * height: 1/2 m v^2 + 1/2 w I w + 1/2 xi M_a xi at release.
 *
 * @param start energy at release
 * @param heightWon m g (h_top - h_release)
 * @param speedLeft energy of motion left at the top
 * @param spent by each loss, integrated with the flight
 * @param straight the same powers at no sideslip, roll or yaw; empty if not asked for. What is left of {@code spent} is
 *     the price of wag and roll.
 * @param rollHold work of the moment that holds the prescribed roll rate, taken out positive
 * @param wind taken out by the wind, positive
 * @param closure (start - heightWon - speedLeft - everything spent) / start [1]: integrated separately, so it tests
 */
public record EnergyLedger(
        double start,
        double heightWon,
        double speedLeft,
        Map<Loss, Double> spent,
        Map<Loss, Double> straight,
        double rollHold,
        double wind,
        double closure) {
    public EnergyLedger {
        spent = Map.copyOf(spent);
        straight = Map.copyOf(straight);
    }

    /** What wag and roll cost [J]; NaN if the straight view was not asked for. */
    public double wag() {
        if (straight.isEmpty()) {
            return Double.NaN;
        }
        double sum = 0;
        for (Loss loss : Loss.values()) {
            sum += spent.get(loss) - straight.get(loss);
        }
        return sum;
    }
}
