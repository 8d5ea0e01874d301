package org.sawfly.study;

import org.sawfly.quantity.Band;
import org.sawfly.quantity.Quantity;

/**
 * What a tuned set-up has to keep.
 *
 * @param of which number
 * @param allowed its range, in its unit; an end may be infinite
 */
public record Limit(Quantity<Result> of, Band allowed) {
    /** How far outside, in shares of the end that is passed; 0 within; NaN when the number has no value. */
    double passedBy(Result result) {
        double value = of.value(result);
        if (value < allowed.low()) {
            return (allowed.low() - value) / Math.max(1e-9, Math.abs(allowed.low()));
        }
        return value > allowed.high() ? (value - allowed.high()) / Math.max(1e-9, Math.abs(allowed.high())) : 0 * value;
    }
}
