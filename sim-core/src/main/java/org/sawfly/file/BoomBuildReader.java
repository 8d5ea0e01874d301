package org.sawfly.file;

import static org.sawfly.file.Bounds.above;
import static org.sawfly.file.Bounds.between;

import java.util.List;
import java.util.Map;
import org.sawfly.glider.BoomBuild;
import org.sawfly.glider.BoomHole;
import org.sawfly.glider.BoomSleeve;
import org.sawfly.glider.BoomSlot;
import org.sawfly.glider.BoomWall;
import org.sawfly.glider.WallStrength;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Unit;

/** Reads how a boom is made and what was done to it besides round holes. */
final class BoomBuildReader {
    private static final BoomWall USUAL = BoomWall.USUAL;
    private static final Bounds PLACE = between(0, 3000);
    private static final Bounds STRENGTH = between(10, 5000).usually(100, 2500);

    private BoomBuildReader() {}

    static BoomBuild read(In in) {
        BoomWall wall = in.optionalMap(
                "wall", "the boom's wall; strengths left out are assumed cautiously", BoomBuildReader::wall);
        Map<String, BoomSlot> slots = in.named("slots", "rudder string", "slots along the boom", (n, s) -> slot(s));
        Map<String, BoomSleeve> sleeves = in.named(
                "sleeves",
                "old splice",
                "tubes glued into the boom or cloth laid round it; what they weigh is among the parts",
                (name, sleeve) -> sleeve(sleeve));
        if (wall == null && !in.has("wall")) {
            cautious(in, "tension_MPa", WallStrength.CAUTIOUS.tension());
            cautious(in, "compression_MPa", WallStrength.CAUTIOUS.compression());
            cautious(in, "shear_MPa", WallStrength.CAUTIOUS.shear());
        }
        return new BoomBuild(wall == null ? USUAL : wall, slots, sleeves);
    }

    /** Lists a strength that is assumed of a wall of which nothing is given. */
    private static void cautious(In in, String key, double strength) {
        double usual = Unit.MEGAPASCAL.fromSi(strength);
        in.reading()
                .assume(new Assumed(
                        in.pathOf("wall." + key),
                        usual,
                        Band.around(usual, usual / 3),
                        Unit.MEGAPASCAL,
                        "strength of the boom's wall: a third of a perfect carbon sheet"));
    }

    /** Whatever is not on the boom is refused. */
    static void check(In in, BoomBuild build, double front, double end) {
        build.slots().forEach((name, slot) -> {
            if (-slot.frontX() < front || -slot.endX() > end) {
                in.problem("slots", "the slot \"" + Ascii.printable(name) + "\" is not on the boom", "");
            }
        });
        build.sleeves().forEach((name, sleeve) -> {
            if (-sleeve.frontX() < front || -sleeve.endX() > end) {
                in.problem("sleeves", "the sleeve \"" + Ascii.printable(name) + "\" is not on the boom", "");
            }
        });
    }

    private static BoomWall wall(In in) {
        double thickness =
                in.optional("thickness_mm", between(0.03, 5).usually(0.15, 1), 0.3, "of the wall, measured at a face");
        double density = in.neutral(
                "density_kg_per_m3", between(500, 9000).usually(1200, 2100), USUAL.density(), "of the cured wall");
        double around = in.neutral(
                "modulus_around_GPa",
                between(0.1, 400).usually(3, 80),
                Unit.GIGAPASCAL.fromSi(USUAL.around()),
                "stiffness of the wall around the tube");
        double shear = in.neutral(
                "shear_modulus_GPa",
                between(0.1, 200).usually(2, 40),
                Unit.GIGAPASCAL.fromSi(USUAL.shear()),
                "stiffness of the wall in shear");
        double contraction =
                in.neutral("contraction", between(0, 0.5), USUAL.poisson(), "contraction around per stretch along");
        WallStrength cautious = WallStrength.CAUTIOUS;
        boolean any = in.has("tension_MPa") || in.has("compression_MPa") || in.has("shear_MPa");
        boolean all = in.has("tension_MPa") && in.has("compression_MPa") && in.has("shear_MPa");
        double tension = strength(in, "tension_MPa", cautious.tension(), "strength along, pulled");
        double compression = strength(in, "compression_MPa", cautious.compression(), "strength along, pressed");
        double sheared = strength(in, "shear_MPa", cautious.shear(), "strength in shear");
        String from = in.optionalText("strength_from", "data sheet", "where the strengths come from");
        String given = from == null ? "as given" : from;
        String source = all ? given : any ? given + "; what is left out " + cautious.source() : cautious.source();
        WallStrength strength = new WallStrength(tension, compression, sheared, source);
        return new BoomWall(thickness, density, around, shear, contraction, strength);
    }

    private static double strength(In in, String key, double cautious, String words) {
        Bounds bounds = key.startsWith("shear") ? between(1, 1000).usually(10, 200) : STRENGTH;
        double usual = Unit.MEGAPASCAL.fromSi(cautious);
        double read = in.optional(key, bounds, usual, words);
        return in.orAssume(read, key, cautious, usual / 3, words + ": a third of a perfect carbon sheet");
    }

    private static BoomSlot slot(In in) {
        double from = in.number("from_behind_mm", PLACE, 600, "forward end");
        double to = in.number("to_behind_mm", PLACE, 612, "rear end");
        double width = in.number("width_mm", above(0, 30).usually(0.5, 6), 2, "across the slot");
        BoomHole.Side side = in.choice("side", List.of(BoomHole.Side.values()), BoomHole.Side.TOP, "side of the boom");
        to = ordered(in, from, to);
        return new BoomSlot(-from, -to, width, side);
    }

    private static BoomSleeve sleeve(In in) {
        BoomSleeve.Fit fit =
                in.choice("fit", List.of(BoomSleeve.Fit.values()), BoomSleeve.Fit.OUTSIDE, "where it sits");
        double from = in.number("from_behind_mm", PLACE, 400, "forward end");
        double to = in.number("to_behind_mm", PLACE, 460, "rear end");
        double parted = in.optional("parted_behind_mm", PLACE, 430, "where the boom is sawn through under it");
        double wall = in.number("wall_mm", StockReader.WALL, 0.4, "thickness of the sleeve");
        double modulus = StockReader.modulus(in, fit);
        double strength = StockReader.strength(in, fit);
        to = ordered(in, from, to);
        if (parted < from || parted > to) {
            in.problem("parted_behind_mm", "lies outside the sleeve", "between from_behind_mm and to_behind_mm");
            parted = 0.5 * (from + to);
        }
        return new BoomSleeve(fit, -from, -to, -parted, wall, modulus, strength);
    }

    private static double ordered(In in, double from, double to) {
        if (to > from) {
            return to;
        }
        if (in.has("from_behind_mm") && in.has("to_behind_mm")) {
            in.problem("to_behind_mm", "must lie behind from_behind_mm", "the two are exchanged");
        }
        return from + Unit.MILLIMETRE.toSi(10);
    }
}
