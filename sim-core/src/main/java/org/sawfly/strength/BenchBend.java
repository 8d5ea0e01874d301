package org.sawfly.strength;

import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomTube;
import org.sawfly.math.Quadrature;

/** What a builder sees on the bench when the boom is loaded by hand: held at one place, a weight or a couple at another. */
public final class BenchBend {
    private static final int PANELS = 32;

    private BenchBend() {}

    /**
     * How far a weight moves the boom where it hangs [m], in any plane.
     *
     * @param heldX where the boom is held, build axes [m]
     * @param hungX where the weight hangs [m]
     * @param weight its pull [N]
     */
    public static double moves(Boom boom, double heldX, double hungX, double weight) {
        return weight * BoomTube.of(boom).deflectionOfForce(heldX, hungX, hungX);
    }

    /**
     * How far a couple about the boom twists it where it is applied [rad]: {@code int T/GJ dx}, for a thin tube
     * {@code GJ = 2 EI G/E} (Bredt; Timoshenko, Strength of Materials, part I, 3rd ed. 1955). Sleeves are left out.
     *
     * @param couple [N m]
     */
    public static double twists(Boom boom, double heldX, double atX, double couple) {
        BoomTube tube = BoomTube.of(boom);
        double ratio = 2 * boom.build().wall().shear() / tube.modulus();
        return couple * Quadrature.integral(x -> 1 / (ratio * tube.bareStiffness(x)), atX, heldX, PANELS);
    }
}
