package org.sawfly.section;

/**
 * Thin-aerofoil theory of a hinged flap without a gap (Glauert, "Theoretical Relationships for an Aerofoil with a Hinged
 * Flap", R&amp;M 1095, 1927). The hinge h lies at {@code cos h = 2 E - 1}, E flap chord over chord;
 * {@code tau = 1 - (h - sin h)/pi}, {@code dcm/ddelta = -sin(h)(1 - cos h)/2}. Deflection [rad] trailing edge down
 * positive, moments nose up positive, hinge moments trailing edge down positive, referred to flap chord squared.
 *
 * @param effectiveness tau, change of zero-lift angle for a unit of deflection, sign reversed [1]
 * @param liftSlope dcl/ddelta [1/rad]
 * @param momentSlope dcm/ddelta about the quarter chord at constant angle of attack [1/rad]
 * @param hingeAlpha dCh/dalpha [1/rad]
 * @param hingeDelta dCh/ddelta [1/rad]
 */
public record PlainFlap(
        double effectiveness, double liftSlope, double momentSlope, double hingeAlpha, double hingeDelta) {
    private static final int STEPS = 400;

    /**
     * The flap of a given size.
     *
     * @param chord flap chord over chord [1], above 0 and below 1
     */
    public static PlainFlap of(double chord) {
        if (!(chord > 0 && chord < 1)) {
            throw new IllegalArgumentException("flap chord must lie between 0 and 1, got " + chord);
        }
        double hinge = Math.acos(1 - 2 * (1 - chord));
        double effectiveness = 1 - (hinge - Math.sin(hinge)) / Math.PI;
        double moment = -0.5 * Math.sin(hinge) * (1 - Math.cos(hinge));
        return new PlainFlap(
                effectiveness,
                2 * Math.PI * effectiveness,
                moment,
                hingeMoment(hinge, chord, false),
                hingeMoment(hinge, chord, true));
    }

    /**
     * Moment of the load about the hinge over the flap, divided by -E^2. With theta from 0 at the leading edge the load of
     * an angle of attack is {@code 4 (1 + cos theta)/sin theta}; that of a deflection, its Fourier series summed, is
     * {@code (4/pi)[(pi - h)(1 + cos theta)/sin theta + ln |sin((theta + h)/2)/sin((theta - h)/2)|]}, h the hinge. The
     * logarithm is integrable; the points crowd at the hinge.
     */
    private static double hingeMoment(double hinge, double chord, boolean flap) {
        double sum = 0;
        double range = Math.PI - hinge;
        for (int i = 0; i < STEPS; i++) {
            double s = (i + 0.5) / STEPS;
            double theta = hinge + range * s * s * (3 - 2 * s);
            double step = range * 6 * s * (1 - s) / STEPS;
            double angle = (1 + Math.cos(theta)) / Math.sin(theta);
            double load = 4 * angle;
            if (flap) {
                double log = Math.log(Math.abs(Math.sin(0.5 * (theta + hinge)) / Math.sin(0.5 * (theta - hinge))));
                load = 4 / Math.PI * (range * angle + log);
            }
            double arm = 0.5 * (Math.cos(hinge) - Math.cos(theta));
            sum += load * arm * 0.5 * Math.sin(theta) * step;
        }
        return -sum / (chord * chord);
    }
}
