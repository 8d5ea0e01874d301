package org.sawfly.study.log;

import org.sawfly.quantity.Band;
import org.sawfly.study.statistics.Normal;
import org.sawfly.study.statistics.StudentT;

/**
 * A fitted number.
 *
 * @param value
 * @param fitted standard error from the scatter of the samples
 * @param carried standard deviation from what the fit held
 * @param freedoms of the scatter
 * @param factor true if ranges are factors on the value, both deviations being those of its logarithm
 */
public record Estimate(double value, double fitted, double carried, int freedoms, boolean factor) {
    private static final double UPPER = 0.95;

    /** Its range 9 times in 10 if all that was held is as it was held. */
    public Band withoutHeld() {
        return range(StudentT.quantile(UPPER, freedoms) * fitted);
    }

    /** Its range 9 times in 10. */
    public Band likely() {
        double scatter = StudentT.quantile(UPPER, freedoms) * fitted;
        double held = Normal.quantile(UPPER) * carried;
        return range(Math.hypot(scatter, held));
    }

    private Band range(double half) {
        return factor ? new Band(value * Math.exp(-half), value * Math.exp(half)) : Band.around(value, half);
    }
}
