package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.sawfly.quantity.Numbers;

/**
 * Rounds numbers so that, as printed, they add up to a printed sum: each is rounded, and what is left over is given step by
 * step to those that lost most (the method of largest remainders).
 */
final class AddingUp {
    private AddingUp() {}

    /**
     * The rounded numbers, in their order.
     *
     * @param values what is shown, in its unit
     * @param total the printed sum they have to make
     * @param decimals of all of them
     */
    static double[] rounded(double[] values, double total, int decimals) {
        double step = Math.pow(10, -decimals);
        double[] shown = new double[values.length];
        double sum = 0;
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            shown[i] = Numbers.rounded(values[i], decimals);
            sum += shown[i];
            order.add(i);
        }
        long steps = Math.round((total - sum) / step);
        double way = Long.signum(steps);
        order.sort(Comparator.comparingDouble(i -> way * (shown[i] - values[i])));
        for (int k = 0; k < Math.abs(steps) && !order.isEmpty(); k++) {
            int i = order.get(k % order.size());
            shown[i] = Numbers.rounded(shown[i] + way * step, decimals);
        }
        return shown;
    }
}
