package org.sawfly.section;

import java.util.function.DoubleUnaryOperator;

/**
 * What thin-aerofoil theory says of a mean line (Glauert, "The Elements of Aerofoil and Airscrew Theory", 1926, chapter
 * VII): with {@code x = (1 - cos theta)/2} and the Fourier coefficients {@code A_n = (2/pi) int dz/dx cos(n theta) dtheta},
 * the zero-lift angle is {@code A_0/2 - A_1/2}, the moment about the quarter chord {@code (pi/4)(A_2 - A_1)} and the lift
 * at which the flow meets the leading edge smoothly {@code pi A_1}.
 *
 * @param zeroLift zero-lift angle [rad], negative for positive camber
 * @param moment moment coefficient about the quarter chord [1], nose up positive
 * @param idealLift lift coefficient of smooth entry [1]
 */
record ThinAerofoil(double zeroLift, double moment, double idealLift) {
    private static final int STEPS = 4000;

    /**
     * Mean line of two parabolas that meet at the peak, the mean line of the NACA four-digit sections (Jacobs, Ward and
     * Pinkerton, NACA Report 460, 1933).
     *
     * @param camber height of the peak over the chord [1]
     * @param place place of the peak over the chord [1], between 0 and 1
     */
    static ThinAerofoil twoParabolas(double camber, double place) {
        double k = 1 - 2 * place;
        double peak = Math.acos(k);
        double front = camber / (place * place);
        double rear = camber / ((1 - place) * (1 - place));
        double[] a = new double[3];
        for (int n = 0; n < 3; n++) {
            double atPeak = integral(n, k, peak);
            a[n] = 2 / Math.PI * (front * (atPeak - integral(n, k, 0)) + rear * (integral(n, k, Math.PI) - atPeak));
        }
        return of(a[0], a[1], a[2]);
    }

    /**
     * Any mean line.
     *
     * @param slope slope dz/dx [1] at the place x/c between 0 and 1
     */
    static ThinAerofoil of(DoubleUnaryOperator slope) {
        double[] a = new double[3];
        for (int i = 0; i < STEPS; i++) {
            double theta = Math.PI * (i + 0.5) / STEPS;
            double s = 2.0 / STEPS * slope.applyAsDouble(0.5 * (1 - Math.cos(theta)));
            for (int n = 0; n < 3; n++) {
                a[n] += s * Math.cos(n * theta);
            }
        }
        return of(a[0], a[1], a[2]);
    }

    private static ThinAerofoil of(double a0, double a1, double a2) {
        return new ThinAerofoil(0.5 * (a0 - a1), 0.25 * Math.PI * (a2 - a1), Math.PI * a1);
    }

    /** Integral of (cos theta - k) cos(n theta) from 0 to theta. */
    private static double integral(int n, double k, double theta) {
        return switch (n) {
            case 0 -> Math.sin(theta) - k * theta;
            case 1 -> 0.5 * theta + 0.25 * Math.sin(2 * theta) - k * Math.sin(theta);
            default -> Math.sin(3 * theta) / 6 + 0.5 * Math.sin(theta) - 0.5 * k * Math.sin(2 * theta);
        };
    }
}
