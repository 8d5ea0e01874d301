package org.sawfly.flight;

import java.util.List;

/**
 * What one launch gave.
 *
 * @param ended how it ended
 * @param release
 * @param top NaNs if there was none
 * @param settled {@link Settled#NONE} if it did not settle
 * @param swing
 * @param maxLoad greatest load along the glider's own down axis, in multiples of gravity [1]
 * @param stalledAtTop angle of attack beyond stall for more than 0.1 s from push-over to 1 s after the top
 * @param ledger null if there was no top
 * @param moments in order of time
 */
public record Outcome(
        Ended ended,
        Release release,
        Top top,
        Settled settled,
        Swing swing,
        double maxLoad,
        boolean stalledAtTop,
        EnergyLedger ledger,
        List<Moment> moments) {
    public Outcome {
        moments = List.copyOf(moments);
    }
}
