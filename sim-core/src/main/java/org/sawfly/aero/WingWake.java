package org.sawfly.aero;

import org.sawfly.math.CubicAxis;
import org.sawfly.math.CubicGrid1;

/**
 * What the wing's vortices do at the tails: velocities proportional to the wing's circulation, hence to {@code V CL}, with the load
 * spread as attached flow has it.
 *
 * <p>Two loads: both halves alike ({@code V CL} of the wing), and opposite (half the difference of {@code V CL}, right less left).
 * When the wind comes from the side the wake drifts away from the tail, see {@link WakeAtTail}.
 */
final class WingWake {
    /** Strips of a tail over which velocities are averaged. */
    private static final int TAIL_STRIPS = 6;
    /** Knots of sin(beta_w) from 0 to 1; at 1 the wake is gone. */
    private static final double[] SINES = {0, 0.1, 0.2, 0.3, 0.45, 0.6, 0.8, 1};

    private final WakeAtTail wake;
    private final double middleX;
    private final double oddRatio;
    /** Circulation of the strips of the right half for V CL = 1 m/s, and for right +1, left -1 m/s [m]. */
    private final double[] even;

    private final double[] odd;

    /** Wake of a wing, prepared from its strips. */
    WingWake(LoneSurface wing) {
        Surface surface = wing.strips.surface;
        this.wake = new WakeAtTail(wing.strips);
        this.middleX = wing.referencePoint.x();
        this.oddRatio = wing.oddRatio();
        this.even = wing.evenCirculation();
        this.odd = wing.oddCirculation();
        double lift = 0;
        for (int i = 0; i < wing.count; i++) {
            lift += even[i] * wing.strips.widths[wing.first + i];
        }
        double perLift = 0.25 * surface.area() / lift;
        for (int i = 0; i < wing.count; i++) {
            even[i] *= perLift;
            odd[i] *= perLift / oddRatio;
        }
    }

    /** See {@link LoneSurface#oddRatio()}. */
    double oddRatio() {
        return oddRatio;
    }

    /** Reference point of the wing, from which the way to the tails counts, build axes [m]. */
    double middleX() {
        return middleX;
    }

    /**
     * Mean velocity of the air at a tailplane (down positive) or fin (right positive) over V CL of the wing, by the sine of the
     * drift angle beta_w, positive in wind from the right [1].
     */
    CubicGrid1 byDrift(Surface tail) {
        Strips strips = Strips.cosine(tail, TAIL_STRIPS);
        int n = SINES.length - 1;
        double[] knots = new double[2 * n + 1];
        double[] values = new double[2 * n + 1];
        for (int i = 0; i <= n; i++) {
            double value = i == n ? 0 : velocity(strips, Math.asin(SINES[i]), even, 1);
            knots[n + i] = SINES[i];
            knots[n - i] = -SINES[i];
            values[n + i] = value;
            values[n - i] = tail.isMirrored() ? value : -value;
        }
        if (!tail.isMirrored()) {
            values[n] = 0;
        }
        return new CubicGrid1(CubicAxis.of(CubicAxis.Ends.FLAT, knots), values);
    }

    /** The same without drift for opposite halves, over half the difference of V CL, right less left [1]. */
    double odd(Surface tail) {
        return velocity(Strips.cosine(tail, TAIL_STRIPS), 0, odd, -1);
    }

    private double velocity(Strips tail, double drift, double[] circulation, double left) {
        double[] row = wake.along(tail, drift);
        double[] folded = left > 0 ? wake.even(row) : wake.odd(row);
        double sum = 0;
        for (int i = 0; i < folded.length; i++) {
            sum += folded[i] * circulation[i];
        }
        return tail.surface.isMirrored() ? -sum : sum;
    }
}
