package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.List;
import org.sawfly.glider.BoomSleeve.Fit;
import org.sawfly.glider.BoomSplice;
import org.sawfly.glider.BoomWrap;
import org.sawfly.glider.DesignChange;
import org.sawfly.glider.SleeveStock;

/**
 * Reads what a boom is mended with. What is left out is a drawn carbon tube as a plug and carbon cloth as a wrap, at about
 * half of what data sheets state (common practice, no source).
 */
final class StockReader {
    static final Bounds WALL = between(0.03, 5).usually(0.1, 1.5);

    private static final double PLUG_MODULUS = 80;
    private static final double CLOTH_MODULUS = 40;
    private static final double PLUG_STRENGTH = 400;
    private static final double CLOTH_STRENGTH = 250;
    private static final double CARBON = 1550;

    private StockReader() {}

    /** The boom sawn through and joined. */
    static DesignChange splice(In in) {
        double behind = behind(in, "forward face of the cut");
        double out = in.neutral("takes_out_mm", between(0, 1000).usually(0, 120), 0, "piece taken out; 0 when none is");
        SleeveStock stock = stock(in, Fit.INSIDE, 80, 0.5);
        double glue = in.neutral("glue_g", between(0, 30).usually(0, 3), 0.4, "glue of the joint");
        return new BoomSplice(-behind, out, stock, glue);
    }

    /** Cloth round the whole boom, or a plug in it. */
    static DesignChange wrap(In in) {
        double behind = behind(in, "middle of the wrap");
        SleeveStock stock = stock(in, Fit.OUTSIDE, 70, 0.2);
        double resin = in.neutral("glue_g", between(0, 30).usually(0, 3), 0.2, "resin besides that of the cured cloth");
        return new BoomWrap(-behind, stock, resin);
    }

    private static double behind(In in, String words) {
        return in.number(
                "behind_mm", between(0, 3000).usually(50, 1200), 430, words + ", behind the root leading edge");
    }

    private static SleeveStock stock(In in, Fit usual, double length, double wall) {
        Fit fit = in.choice("fit", List.of(Fit.values()), usual, "a plug inside or a sleeve outside");
        return new SleeveStock(
                fit,
                in.neutral("length_mm", between(0, 1000).usually(20, 200), length, "length along the boom"),
                in.neutral("wall_mm", WALL, wall, "thickness of the sleeve"),
                in.neutral("density_kg_per_m3", between(0, 9000), CARBON, "of the sleeve"),
                modulus(in, fit),
                strength(in, fit));
    }

    /** Stiffness along a sleeve [Pa]. */
    static double modulus(In in, Fit fit) {
        double usual = fit == Fit.INSIDE ? PLUG_MODULUS : CLOTH_MODULUS;
        return in.neutral("modulus_GPa", between(0.1, 1000).usually(5, 250), usual, "stiffness along the sleeve");
    }

    /** Strength along a sleeve [Pa]. */
    static double strength(In in, Fit fit) {
        double usual = fit == Fit.INSIDE ? PLUG_STRENGTH : CLOTH_STRENGTH;
        return in.neutral("strength_MPa", between(1, 5000).usually(50, 2000), usual, "strength along the sleeve");
    }
}
