package org.sawfly.study.log;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.sawfly.study.log.Calibration.Piece;

/**
 * One fit: unknowns are ln(drag), then speed and release of each throw. Rows are the samples, throw by throw, and a last one
 * that says how far a drag factor is plausible at all; its weight follows the samples' noise, so that it counts only where
 * they say next to nothing.
 */
final class LeastSquaresFit {
    /** Standard deviation of the logarithm of a plausible drag factor: half or twice the drag is just credible [1]. */
    private static final double PLAUSIBLE = 0.42;
    /** Noise of an ordinary altimeter, to begin with [m]. */
    private static final double USUAL_NOISE = 0.3;
    /** Noise below which samples are taken as exact [m]. */
    private static final double LEAST_NOISE = 1e-3;

    private static final int MOST_EVALUATIONS = 200;
    private static final int MOST_ITERATIONS = 60;
    private static final double SPEED_STEP = 0.05;
    private static final double DRAG_STEP = 0.005;
    private static final double TIME_STEP = 0.004;
    private static final double LOG_DRAG_LIMIT = 1.6;
    /** Samples that scatter more about the flight are none of this glider's [m]. */
    private static final double MOST_NOISE = 2;
    /** Share of its deviation by which something held is moved to see what it does. */
    private static final double HELD_STEP = 0.5;

    private final ThrowModel model;
    private final List<Piece> pieces;
    private final int rows;
    private final int unknowns;
    private final double[] seen;
    private double plausible = USUAL_NOISE / PLAUSIBLE;

    LeastSquaresFit(ThrowModel model, List<Piece> pieces) {
        this.model = model;
        this.pieces = pieces;
        this.unknowns = 1 + 2 * pieces.size();
        this.rows = pieces.stream().mapToInt(piece -> piece.times().length).sum();
        this.seen = new double[rows + 1];
        int row = 0;
        for (Piece piece : pieces) {
            System.arraycopy(piece.heights(), 0, seen, row, piece.heights().length);
            row += piece.heights().length;
        }
        if (rows <= unknowns) {
            throw new NoFitException(rows + " samples are too few for " + unknowns + " unknowns: log faster");
        }
    }

    Calibrated calibrated(List<String> skipped) {
        Optimum first = optimum(start());
        plausible = Math.max(LEAST_NOISE, noise(first)) / PLAUSIBLE;
        Optimum optimum = optimum(first.getPoint().toArray());
        double[] at = optimum.getPoint().toArray();
        int freedoms = rows - unknowns;
        double noise = noise(optimum);
        if (noise > MOST_NOISE || Math.abs(at[0]) > 0.99 * LOG_DRAG_LIMIT) {
            throw new NoFitException("the log does not look like a launch of this glider");
        }
        RealMatrix jacobian = heightsAndSlopes(at).getSecond();
        RealMatrix inverse = inverse(jacobian);
        RealMatrix carried = carried(at, jacobian, inverse);
        double[][] spread = inverse.scalarMultiply(noise * noise).getData();
        double[][] held = carried.multiplyTransposed(carried).getData();
        double drag = Math.exp(at[0]);
        Estimate factor = new Estimate(drag, Math.sqrt(spread[0][0]), Math.sqrt(held[0][0]), freedoms, true);
        List<Calibrated.Thrown> fitted = new ArrayList<>();
        double[] off = optimum.getResiduals().toArray();
        int row = 0;
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            int v = 1 + 2 * i;
            List<double[]> residuals = new ArrayList<>();
            for (double time : piece.times()) {
                residuals.add(new double[] {time - at[v + 1], off[row++]});
            }
            Estimate speed = new Estimate(at[v], Math.sqrt(spread[v][v]), Math.sqrt(held[v][v]), freedoms, false);
            fitted.add(new Calibrated.Thrown(piece.logged(), at[v + 1], speed, residuals));
        }
        return new Calibrated(
                factor, meanSpeed(at, spread, held), fitted, correlation(spread, held), noise, List.copyOf(skipped));
    }

    /** Standard deviation of the samples about the flights [m]. */
    private double noise(Optimum optimum) {
        double[] off = optimum.getResiduals().toArray();
        double squares = 0;
        for (int row = 0; row < rows; row++) {
            squares += off[row] * off[row];
        }
        return Math.sqrt(squares / (rows - unknowns));
    }

    private double[] start() {
        double[] start = new double[unknowns];
        for (int i = 0; i < pieces.size(); i++) {
            start[1 + 2 * i] = pieces.get(i).firstSpeed(model);
            start[2 + 2 * i] = pieces.get(i).logged().launch().release();
        }
        return start;
    }

    private Optimum optimum(double[] start) {
        try {
            return new LevenbergMarquardtOptimizer()
                    .withInitialStepBoundFactor(1)
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .target(seen)
                            .model(point -> heightsAndSlopes(point.toArray()))
                            .parameterValidator(LeastSquaresFit::held)
                            .maxEvaluations(MOST_EVALUATIONS)
                            .maxIterations(MOST_ITERATIONS)
                            .checker((iteration, before, after) ->
                                    before.getPoint().getLInfDistance(after.getPoint()) < 1e-6)
                            .build());
        } catch (MathRuntimeException e) {
            throw new NoFitException(
                    "the fit does not come to an end: the log does not look like this glider's launch");
        }
    }

    /** Keeps a guess within what a glider can do. */
    private static RealVector held(RealVector guess) {
        guess.setEntry(0, Math.max(-LOG_DRAG_LIMIT, Math.min(LOG_DRAG_LIMIT, guess.getEntry(0))));
        for (int i = 1; i < guess.getDimension(); i += 2) {
            guess.setEntry(i, Math.max(5, Math.min(80, guess.getEntry(i))));
        }
        return guess;
    }

    private double[] heights(double logDrag, double[] at, double faster, double[] off) {
        double[] heights = new double[rows + 1];
        heights[rows] = plausible * logDrag;
        int row = 0;
        for (int i = 0; i < pieces.size(); i++) {
            DoubleUnaryOperator flight = model.flight(at[1 + 2 * i] + faster, Math.exp(logDrag), off);
            for (double time : pieces.get(i).times()) {
                heights[row++] = flight.applyAsDouble(time - at[2 + 2 * i]);
            }
        }
        return heights;
    }

    private Pair<RealVector, RealMatrix> heightsAndSlopes(double[] at) {
        double[] faster = heights(at[0], at, SPEED_STEP, nothing());
        double[] more = heights(at[0] + DRAG_STEP, at, 0, nothing());
        double[] heights = new double[rows + 1];
        double[][] slopes = new double[rows + 1][unknowns];
        heights[rows] = plausible * at[0];
        slopes[rows][0] = plausible;
        int row = 0;
        for (int i = 0; i < pieces.size(); i++) {
            int v = 1 + 2 * i;
            DoubleUnaryOperator flight = model.flight(at[v], Math.exp(at[0]), nothing());
            for (double time : pieces.get(i).times()) {
                double t = time - at[v + 1];
                heights[row] = flight.applyAsDouble(t);
                slopes[row][0] = (more[row] - heights[row]) / DRAG_STEP;
                slopes[row][v] = (faster[row] - heights[row]) / SPEED_STEP;
                slopes[row][v + 1] =
                        -(flight.applyAsDouble(t + TIME_STEP) - flight.applyAsDouble(t - TIME_STEP)) / (2 * TIME_STEP);
                row++;
            }
        }
        return new Pair<>(new ArrayRealVector(heights, false), new Array2DRowRealMatrix(slopes, false));
    }

    private static RealMatrix inverse(RealMatrix jacobian) {
        try {
            RealMatrix normal = jacobian.transposeMultiply(jacobian);
            return new QRDecomposition(normal, 1e-12).getSolver().getInverse();
        } catch (MathRuntimeException e) {
            throw new NoFitException("release speed and drag cannot be told apart in this log");
        }
    }

    /** What each thing held does to each unknown, for one deviation of it; the last one is the ground. */
    private RealMatrix carried(double[] at, RealMatrix jacobian, RealMatrix inverse) {
        List<ThrowModel.Held> held = model.held();
        double[][] effects = new double[rows + 1][held.size() + 1];
        for (int k = 0; k < held.size(); k++) {
            double step = HELD_STEP * held.get(k).deviation();
            double[] off = nothing();
            off[k] = step;
            double[] above = heights(at[0], at, 0, off);
            off[k] = -step;
            double[] below = heights(at[0], at, 0, off);
            for (int row = 0; row < rows; row++) {
                effects[row][k] = (above[row] - below[row]) / (2 * HELD_STEP);
            }
        }
        for (int row = 0; row < rows; row++) {
            effects[row][held.size()] = Calibration.IN_HAND_DEVIATION;
        }
        RealMatrix effect = new Array2DRowRealMatrix(effects, false);
        return inverse.multiply(jacobian.transposeMultiply(effect)).scalarMultiply(-1);
    }

    private Estimate meanSpeed(double[] at, double[][] spread, double[][] held) {
        double mean = 0;
        for (int v = 1; v < unknowns; v += 2) {
            mean += at[v] / pieces.size();
        }
        return new Estimate(mean, Math.sqrt(ofMeanSpeed(spread)), Math.sqrt(ofMeanSpeed(held)), rows - unknowns, false);
    }

    /** Variance of the mean release speed by a matrix of covariances. */
    private double ofMeanSpeed(double[][] covariance) {
        double n = pieces.size();
        double sum = 0;
        for (int i = 1; i < unknowns; i += 2) {
            for (int k = 1; k < unknowns; k += 2) {
                sum += covariance[i][k] / (n * n);
            }
        }
        return sum;
    }

    private double correlation(double[][] spread, double[][] held) {
        double with = 0;
        for (int v = 1; v < unknowns; v += 2) {
            with += (spread[0][v] + held[0][v]) / pieces.size();
        }
        return with / Math.sqrt((ofMeanSpeed(spread) + ofMeanSpeed(held)) * (spread[0][0] + held[0][0]));
    }

    private double[] nothing() {
        return new double[model.held().size()];
    }
}
