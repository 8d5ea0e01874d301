package org.sawfly.study.log;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.Scenario;
import org.sawfly.quantity.Numbers;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Uncertainties;
import org.sawfly.study.Workbench;

/**
 * Makes the example logs: plover thrown by club, flown by the program itself, seen through an invented altimeter. Release
 * speeds scatter as a club flyer's do; noise, lost samples, clock and zero are drawn by a fixed seed.
 */
final class DemoLogs {
    /** The folder of the example logs, seen from the library's folder. */
    static final Path FOLDER = Path.of("../scenarios/logs");

    /**
     * One log.
     *
     * @param file its name
     * @param drag true factor on the drag of wing and tails [1]
     * @param seed of everything drawn
     */
    record Demo(String file, double drag, long seed) {}

    static final List<Demo> ALL =
            List.of(new Demo("plover-before.csv", 1.12, 17), new Demo("plover-after.csv", 0.92, 18));
    /** True mean release speed [m/s]. */
    static final double SPEED = 34;

    private static final int THROWS = 8;
    private static final double SPEED_SCATTER = 0.6;
    private static final double RATE = 5;
    private static final double NOISE = 0.25;
    private static final double DROPOUTS = 0.01;
    private static final double QUIET = 14;
    private static final double FLOWN = 6;
    private static final double GLIDES = 56;
    private static final double BETWEEN = 90;
    private static final double DESCENT = 3;
    private static final double CIRCLING = 1.15;
    /** Air that rises or sinks, the same for ten seconds or so [m/s]. */
    private static final double AIR = 0.03;

    private DemoLogs() {}

    /** One log as a file. */
    static String text(Demo demo) {
        ScenarioFile file = ScenarioFile.open(Path.of("../scenarios/plover.yaml"), Path.of("../scenarios/club.yaml"));
        Workbench bench = new Workbench();
        Scenario scenario = file.with(List.of());
        Result result = bench.answer(scenario);
        FlightModel model = new FlightModel(bench, scenario, result, Uncertainties.USUAL);
        double sink = CIRCLING * ResultQuantities.MIN_SINK.value(result);
        SplittableRandom random = new SplittableRandom(demo.seed());
        StringBuilder text = new StringBuilder("# Invented: plover thrown by club, flown by sawfly, seen through an"
                + " invented altimeter. No glider flew this.\ntime_s,height_m\n");
        double clock = 20 + 50 * random.nextDouble();
        double zero = -3 * random.nextDouble();
        for (int n = 0; n < THROWS; n++) {
            double[] heights = heights(model, SPEED + SPEED_SCATTER * random.nextGaussian(), demo.drag(), sink, random);
            for (int i = 0; i < heights.length; i++) {
                double noise = NOISE * random.nextGaussian();
                if (random.nextDouble() >= DROPOUTS) {
                    text.append(Numbers.fixed(clock + n * BETWEEN + i / RATE, 2))
                            .append(',')
                            .append(Numbers.fixed(zero + heights[i] + noise, 1))
                            .append('\n');
                }
            }
        }
        return text.toString();
    }

    /** True heights of one throw, from the quiet before it to the hand after it [m]. */
    private static double[] heights(
            FlightModel model, double speed, double drag, double sink, SplittableRandom random) {
        DoubleUnaryOperator flight =
                model.flight(speed, drag, new double[model.held().size()]);
        List<Double> airs = new ArrayList<>();
        for (int i = 0; i <= BETWEEN / 10; i++) {
            airs.add(AIR * random.nextGaussian());
        }
        double[] heights = new double[(int) (BETWEEN * RATE)];
        double height = Calibration.IN_HAND;
        for (int i = 0; i < heights.length; i++) {
            double after = i / RATE - QUIET;
            if (after >= 0 && after < FLOWN) {
                height = flight.applyAsDouble(after);
            } else if (after >= FLOWN) {
                double down = after < GLIDES ? sink - airs.get((int) (after / 10)) : DESCENT;
                height = Math.max(Calibration.IN_HAND, height - down / RATE);
            }
            heights[i] = height;
        }
        return heights;
    }
}
