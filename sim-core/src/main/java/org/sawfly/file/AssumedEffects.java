package org.sawfly.file;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.sawfly.quantity.Band;
import org.sawfly.study.NoAnswerException;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Workbench;

/**
 * What each assumption may do to the launch: the glider is read anew with it at either end of its range, weighed and
 * balanced as before, and thrown with the same throw.
 */
final class AssumedEffects {
    private final Workbench bench = new Workbench();
    private final ScenarioFile file;
    private final double height;

    private AssumedEffects(ScenarioFile file) {
        this.file = file;
        this.height = height(file);
    }

    /**
     * The greater change of launch height [m] by path: infinite where it would not fly, NaN where nothing is known because
     * it does not fly as it is.
     */
    static Map<String, Double> of(ScenarioFile file, List<Assumed> assumed) {
        AssumedEffects effects = new AssumedEffects(file);
        return assumed.parallelStream().collect(Collectors.toMap(Assumed::path, effects::greater));
    }

    private double greater(Assumed one) {
        Band band = one.band();
        boolean doubted = band.high() > band.low();
        return doubted ? Math.max(change(one.path(), band.low()), change(one.path(), band.high())) : 0;
    }

    /** What another value does [m]; none where the file's bounds do not let it be. */
    private double change(String path, double value) {
        if (Double.isNaN(height)) {
            return Double.NaN;
        }
        try {
            double other = height(file.assuming(path, value));
            return Double.isNaN(other) ? Double.POSITIVE_INFINITY : Math.abs(other - height);
        } catch (InputException e) {
            return 0;
        }
    }

    private double height(ScenarioFile glider) {
        try {
            Result result = bench.answer(glider.with(List.of()));
            return ResultQuantities.APEX_HEIGHT.value(result);
        } catch (NoAnswerException e) {
            return Double.NaN;
        }
    }
}
