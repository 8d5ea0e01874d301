package org.sawfly.study;

import org.sawfly.quantity.Band;
import org.sawfly.study.statistics.Sample;

/**
 * What many draws of one number gave.
 *
 * @param median in the number's unit; NaN when no draw gave one
 * @param likely its range 9 times in 10
 */
public record Spread(double median, Band likely) {
    private static final double LOW = 0.05;

    static Spread of(double[] values) {
        Sample sample = Sample.of(values);
        return new Spread(sample.median(), new Band(sample.quantile(LOW), sample.quantile(1 - LOW)));
    }
}
