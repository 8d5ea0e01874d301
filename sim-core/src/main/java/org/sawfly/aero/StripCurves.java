package org.sawfly.aero;

import org.sawfly.math.QuadraticAxis;

/**
 * Scratch for looking up the sections of strips. {@link #prepare} finds a strip's place between Reynolds numbers and flap
 * angles; after it any angle of attack may be asked for. The nine rows of the table are mixed once for the piece an angle lies
 * in and stay for the next angle in the same piece, which leaves the values untouched.
 */
final class StripCurves {
    private static final int THREE = 3;
    private static final int NINE = 9;

    private final StripTable[] tables;
    /** Rows of the table and their weights, over Reynolds number and flap angle, of every strip. */
    private final int[] rows;

    private final double[] weights;
    private final int[] mixedPiece;
    /** cl, cd, cm before, at and after the piece, by strip. */
    private final double[] mixed;

    /** Lift coefficient of the section with its chord along the flow. */
    double liftAtZero;
    /** Last drag and moment coefficient. */
    double drag, moment;

    StripCurves(StripTable[] tables) {
        int n = tables.length;
        this.tables = tables;
        this.rows = new int[NINE * n];
        this.weights = new double[NINE * n];
        this.mixedPiece = new int[n];
        this.mixed = new double[NINE * n];
    }

    /** Takes a strip's Reynolds number and flap angle [rad] and sets {@link #liftAtZero}. */
    void prepare(int strip, double reynoldsNumber, double flap) {
        StripTable table = tables[strip];
        QuadraticAxis numbers = table.reynolds;
        QuadraticAxis flaps = table.flaps;
        double place = numbers.wrap(Math.sqrt(reynoldsNumber));
        int j = numbers.piece(place);
        double s = numbers.fraction(place, j);
        double low = numbers.weightBefore(j, s);
        double high = numbers.weightAfter(j, s);
        double deflection = flaps.wrap(flap);
        int k = flaps.piece(deflection);
        double t = flaps.fraction(deflection, k);
        double up = flaps.weightBefore(k, t);
        double down = flaps.weightAfter(k, t);
        int u = flaps.indexBefore(k);
        int d = flaps.indexAfter(k);
        double level = 1 - up - down;
        int count = flaps.size();
        int at = NINE * strip;
        double sum = three(table, at, numbers.indexBefore(j) * count, low, u, k, d, up, level, down);
        sum += three(table, at + THREE, j * count, 1 - low - high, u, k, d, up, level, down);
        sum += three(table, at + 2 * THREE, numbers.indexAfter(j) * count, high, u, k, d, up, level, down);
        liftAtZero = sum;
        mixedPiece[strip] = -1;
    }

    private double three(
            StripTable table,
            int at,
            int first,
            double weight,
            int u,
            int k,
            int d,
            double up,
            double level,
            double down) {
        int row = table.row;
        rows[at] = (first + u) * row;
        rows[at + 1] = (first + k) * row;
        rows[at + 2] = (first + d) * row;
        double a = weight * up;
        double b = weight * level;
        double c = weight * down;
        weights[at] = a;
        weights[at + 1] = b;
        weights[at + 2] = c;
        double[] lift = table.liftAtZero;
        return a * lift[first + u] + b * lift[first + k] + c * lift[first + d];
    }

    /** Lift coefficient of a strip at an angle of attack [rad]. */
    double lift(int strip, double angle) {
        QuadraticAxis axis = tables[strip].alphas;
        double x = axis.wrap(angle);
        int piece = axis.piece(x);
        double t = axis.fraction(x, piece);
        if (mixedPiece[strip] != piece) {
            mix(strip, piece);
        }
        int at = NINE * strip;
        double low = axis.weightBefore(piece, t);
        double high = axis.weightAfter(piece, t);
        double own = mixed[at + 3];
        return own + low * (mixed[at] - own) + high * (mixed[at + 6] - own);
    }

    /** Sets {@link #drag} and {@link #moment} of a strip at an angle of attack [rad]. */
    void dragAndMoment(int strip, double angle) {
        QuadraticAxis axis = tables[strip].alphas;
        double x = axis.wrap(angle);
        int piece = axis.piece(x);
        double t = axis.fraction(x, piece);
        if (mixedPiece[strip] != piece) {
            mix(strip, piece);
        }
        int at = NINE * strip;
        double low = axis.weightBefore(piece, t);
        double high = axis.weightAfter(piece, t);
        double own = 1 - low - high;
        drag = low * mixed[at + 1] + own * mixed[at + 4] + high * mixed[at + 7];
        moment = low * mixed[at + 2] + own * mixed[at + 5] + high * mixed[at + 8];
    }

    private void mix(int strip, int piece) {
        mixedPiece[strip] = piece;
        double[] v = tables[strip].values;
        double m0 = 0;
        double m1 = 0;
        double m2 = 0;
        double m3 = 0;
        double m4 = 0;
        double m5 = 0;
        double m6 = 0;
        double m7 = 0;
        double m8 = 0;
        int first = StripTable.CHANNELS * piece;
        int end = NINE * strip + NINE;
        for (int r = NINE * strip; r < end; r++) {
            double weight = weights[r];
            int p = rows[r] + first;
            m0 += weight * v[p];
            m1 += weight * v[p + 1];
            m2 += weight * v[p + 2];
            m3 += weight * v[p + 3];
            m4 += weight * v[p + 4];
            m5 += weight * v[p + 5];
            m6 += weight * v[p + 6];
            m7 += weight * v[p + 7];
            m8 += weight * v[p + 8];
        }
        int to = NINE * strip;
        mixed[to] = m0;
        mixed[to + 1] = m1;
        mixed[to + 2] = m2;
        mixed[to + 3] = m3;
        mixed[to + 4] = m4;
        mixed[to + 5] = m5;
        mixed[to + 6] = m6;
        mixed[to + 7] = m7;
        mixed[to + 8] = m8;
    }
}
