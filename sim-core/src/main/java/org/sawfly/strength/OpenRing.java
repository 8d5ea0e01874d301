package org.sawfly.strength;

import org.sawfly.glider.TubeSection;

/**
 * A tube with a strip cut out of its wall, from one end of a slot to the other.
 *
 * <p>Thin ring of radius r and wall t, the strip reaching phi to both sides. Along the direction a of the slot the centre of
 * what is left lies at {@code e = -r sin(phi)/(pi - phi)}; about it
 *
 * <pre>
 * I_a = r^3 t (pi - phi - sin(phi) cos(phi)) - 2 r t (pi - phi) e^2,   I_b = r^3 t (pi - phi + sin(phi) cos(phi))
 * </pre>
 *
 * (integrals of cos^2 and sin^2 over what is left; parallel axes), and stress follows the straight line of plain bending in
 * both directions. Twist and shear of the open section are not looked at.
 */
final class OpenRing {
    private static final int POINTS = 360;

    private final double radius;
    private final double half;
    private final double centre;
    private final double inertiaA;
    private final double inertiaB;
    private final double outward;

    /**
     * The ring.
     *
     * @param width of the strip around the tube [m]
     */
    OpenRing(TubeSection tube, double width) {
        double r = tube.middleRadius();
        double t = tube.wall();
        double phi = Math.min(0.9 * Math.PI, 0.5 * width / r);
        double left = Math.PI - phi;
        this.radius = r;
        this.half = phi;
        this.centre = -r * Math.sin(phi) / left;
        double cross = Math.sin(phi) * Math.cos(phi);
        this.inertiaA = r * r * r * t * (left - cross) - 2 * r * t * left * centre * centre;
        this.inertiaB = r * r * r * t * (left + cross);
        this.outward = Math.PI * r * r * t / tube.modulus();
    }

    /**
     * Greatest tension and greatest compression, both positive [Pa].
     *
     * @param towards bending moment towards the side of the slot [N m]
     * @param aside bending moment at right angles to it [N m]
     */
    double[] stresses(double towards, double aside) {
        double tension = 0;
        double compression = 0;
        for (int i = 0; i <= POINTS; i++) {
            double angle = half + 2 * (Math.PI - half) * i / POINTS;
            double a = radius * Math.cos(angle) - centre;
            double b = radius * Math.sin(angle);
            double stress = -outward * (towards * a / inertiaA + aside * b / inertiaB);
            tension = Math.max(tension, stress);
            compression = Math.max(compression, -stress);
        }
        return new double[] {tension, compression};
    }
}
