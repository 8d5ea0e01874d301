package org.sawfly.file;

import static org.sawfly.file.Bounds.above;
import static org.sawfly.file.Bounds.between;

import java.util.List;
import java.util.Map;
import org.sawfly.air.Standard;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomBuild;
import org.sawfly.glider.BoomHole;
import org.sawfly.glider.BoomStiffness;
import org.sawfly.glider.Pod;
import org.sawfly.quantity.Unit;

/** Reads boom and pod. */
final class HullReader {
    /** A usual boom [kg/m], and how far in front of the wing's trailing edge it leaves the pod [m]. */
    private static final double LINE_MASS = 0.022;

    private static final double BEFORE_TRAILING_EDGE = Unit.MILLIMETRE.toSi(50);
    private static final double THICKEST = Unit.MILLIMETRE.toSi(20);
    private static final double USUAL_END = 0.79;
    private static final double USUAL_NOSE = 0.265;
    private static final double DEMO_POD_BALANCE = Unit.MILLIMETRE.toSi(76);

    private HullReader() {}

    /**
     * The boom.
     *
     * @param rootChord of the wing [m]
     * @param z         height of its axis in build axes [m]
     */
    static Boom boom(In in, double rootChord, double z) {
        double end = in.number(
                "end_behind_mm",
                between(200, 3000).usually(500, 1300),
                1000 * USUAL_END,
                "very end of the boom, behind the wing's root leading edge");
        double endDiameter =
                in.number("end_diameter_mm", between(2, 60).usually(5, 14), 8.5, "outside, at the very end");
        double front = in.optional("front_behind_mm", between(0, 1000), 118, "where it comes out of the pod");
        double frontDiameter = in.optional(
                "front_diameter_mm", between(2, 80).usually(12, 26), 17, "outside, where it comes out of the pod");
        double mass = in.optional("mass_g", between(1, 200).usually(8, 30), 14.8, "the whole tube");
        double lineMass = in.optional("g_per_m", between(2, 200).usually(12, 35), 22, "of an offcut");
        double modulus = in.optional(
                "specific_modulus_MNm_per_kg",
                between(2, 300).usually(20, 120),
                55,
                "stiffness of the tube's material over its density");
        BoomStiffness test =
                in.optionalMap("bend_test", "a weight hung on the boom, the wing held down", HullReader::bendTest);
        Map<String, BoomHole> holes = in.named(
                "holes",
                "elevator string",
                "holes in the boom",
                (name, hole) -> new BoomHole(
                        -hole.number("behind_mm", between(0, 3000), 585, "behind the wing's root leading edge"),
                        hole.number("diameter_mm", above(0, 30).usually(0.5, 8), 2, "of the hole"),
                        hole.choice("side", List.of(BoomHole.Side.values()), BoomHole.Side.TOP, "side of the boom")));
        BoomBuild build = BoomBuildReader.read(in);

        double trailing = Math.max(0, rootChord - BEFORE_TRAILING_EDGE);
        front = in.orAssume(
                front, "front_behind_mm", trailing, 15, "boom leaving the pod 50 mm ahead of the wing's trailing edge");
        frontDiameter = in.orAssume(
                frontDiameter,
                "front_diameter_mm",
                Math.max(endDiameter, Math.min(2 * endDiameter, THICKEST)),
                1.5,
                "twice the end, at most 20 mm");
        if (front >= end - Unit.MILLIMETRE.toSi(50)) {
            in.problem(
                    "front_behind_mm",
                    "the boom must be longer than 50 mm between front_behind_mm and end_behind_mm",
                    "end_behind_mm is measured from the wing's root leading edge");
            front = 0;
            end = Math.max(end, USUAL_END);
        }
        if (endDiameter > frontDiameter) {
            in.doubt("end_diameter_mm", "the end is thicker than the front", "the two are exchanged");
        }
        if (in.has("mass_g") && in.has("g_per_m")) {
            in.problem("g_per_m", "mass_g is given as well", "leave out one of the two");
        }
        if (!in.has("mass_g")) {
            lineMass = in.orAssume(lineMass, "g_per_m", LINE_MASS, 3, "weight of a usual boom");
            mass = lineMass * (end - front);
        }
        BoomStiffness stiffness = test;
        if (test == null) {
            stiffness = new BoomStiffness.OfMaterial(in.orAssume(
                    modulus, "specific_modulus_MNm_per_kg", 55e6, 11, "stiffness of carbon tube over its density"));
        } else if (in.has("specific_modulus_MNm_per_kg")) {
            in.problem("specific_modulus_MNm_per_kg", "a bend_test is given as well", "leave out one of the two");
        }
        if (test instanceof BoomStiffness.OfBendTest bend && -bend.hungX() > end) {
            in.problem("bend_test", "the weight must hang on the boom, not behind its end", "hung_behind_mm: 663");
            stiffness = new BoomStiffness.OfMaterial(55e6);
        }
        checkHoles(in, holes, front, end);
        BoomBuildReader.check(in, build, front, end);
        return new Boom(mass, -front, -end, z, frontDiameter, endDiameter, stiffness, holes, build);
    }

    private static BoomStiffness bendTest(In in) {
        double held = in.number(
                "held_behind_mm", between(0, 2000), 168, "where the boom leaves the hand or clamp that holds it");
        double hung = in.number("hung_behind_mm", between(50, 3000), 663, "where the weight hangs");
        double weight = in.number("weight_g", between(20, 5000), 500, "hung weight");
        double moves =
                in.number("moves_mm", between(0.1, 300).usually(1, 80), 5.7, "how far the boom moves at the weight");
        if (hung <= held) {
            in.problem("hung_behind_mm", "the weight must hang behind held_behind_mm", "");
            hung = held + Unit.MILLIMETRE.toSi(500);
        }
        return new BoomStiffness.OfBendTest(-held, -hung, weight * Standard.GRAVITY, moves);
    }

    private static void checkHoles(In in, Map<String, BoomHole> holes, double front, double end) {
        holes.forEach((name, hole) -> {
            if (-hole.x() < front || -hole.x() > end) {
                in.problem("holes", "the hole \"" + Ascii.printable(name) + "\" is not on the boom", "");
            }
        });
    }

    static Pod pod(In in, double z) {
        double nose = in.number(
                "nose_ahead_mm",
                between(50, 1000).usually(150, 450),
                1000 * USUAL_NOSE,
                "nose tip ahead of the wing's root leading edge");
        double mass = in.assume("mass_g", between(3, 300).usually(15, 50), 28, 6, "pod with hatch");
        double balance = in.optional("balances_ahead_mm", between(0, 800), 76, "balance point of the bare pod");
        double width = in.assume("width_mm", between(8, 150).usually(18, 50), 27, 3, "greatest width of the pod");
        double height = in.assume("height_mm", between(8, 150).usually(20, 60), 34, 4, "greatest height of the pod");
        balance = in.orAssume(
                balance,
                "balances_ahead_mm",
                DEMO_POD_BALANCE * nose / USUAL_NOSE,
                15,
                "balance point in proportion to the nose");
        if (balance > nose) {
            in.problem("balances_ahead_mm", "lies ahead of the nose tip", "");
            balance = nose / 2;
        }
        return new Pod(mass, balance, nose, z, width, height);
    }
}
