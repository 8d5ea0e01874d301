package org.sawfly.study.log;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;

/**
 * How often the truth lies within the range stated 9 times in 10, over seeded cases in which everything that is held is off
 * by chance.
 *
 * @param cases
 * @param speeds how often the release speed did
 * @param drags how often the drag factor did
 */
record Coverage(int cases, int speeds, int drags) {
    static Coverage of(FlightModel model, double rate, int cases, long seed) {
        int speeds = 0;
        int drags = 0;
        for (int i = 0; i < cases; i++) {
            SplittableRandom random = new SplittableRandom(1000 * seed + i);
            double speed = 31 + 6 * random.nextDouble();
            double other = 31 + 6 * random.nextDouble();
            double drag = 0.85 + 0.3 * random.nextDouble();
            double[] off = new double[model.held().size()];
            for (int k = 0; k < off.length; k++) {
                off[k] = model.held().get(k).deviation() * random.nextGaussian();
            }
            double inHand = Calibration.IN_HAND + Calibration.IN_HAND_DEVIATION * random.nextGaussian();
            DoubleUnaryOperator flight = model.flight(speed, drag, off);
            DoubleUnaryOperator[] flights = {flight, model.flight(other, drag, off), flight};
            HeightLog log = MadeLog.of(flights, inHand, rate, 0.25, 0.02, random);
            Calibrated found = new Calibration(model).fit(List.of(log));
            speeds += found.throwsFitted().get(0).speed().likely().contains(speed) ? 1 : 0;
            drags += found.drag().likely().contains(drag) ? 1 : 0;
        }
        return new Coverage(cases, speeds, drags);
    }
}
