package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.glider.Boom;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Part;
import org.sawfly.glider.Piece;
import org.sawfly.glider.Pod;
import org.sawfly.glider.Tailplane;
import org.sawfly.glider.Wing;

/**
 * Glued pieces that were weighed and balanced together: the masses of their parts are adjusted to agree. Of all ways to
 * do that the one is taken that changes the masses least in proportion, {@code min sum (d_i^2/m_i)}: d_i = m_i (a + b
 * x_i), with a and b from mass and moment.
 */
final class Weighings {
    static final List<String> PIECES =
            List.of(Piece.WING, Piece.TAILPLANE, Piece.FIN, Piece.BOOM, Piece.POD, Piece.NOSE_LEAD);

    /** Places nearer to each other than this cannot be told apart by balancing [m]. */
    private static final double SAME_PLACE = 1e-3;

    /**
     * One weighing.
     *
     * @param in   where it stands
     * @param of   names of the pieces
     * @param mass together [kg]
     * @param x    balance point, forward positive [m]; NaN when not balanced
     */
    record Weighing(In in, List<String> of, double mass, double x) {}

    private Weighings() {}

    static Map<String, Weighing> read(In in) {
        return in.named("weighings", "pod and boom", "glued pieces weighed together", (name, one) -> {
            List<String> of =
                    one.texts("of", "pod, boom", "which pieces: wing, tailplane, fin, boom, pod, or names of parts");
            double mass = one.number("mass_g", between(0.1, 1000), 43.3, "weight together");
            double ahead =
                    one.optional("ahead_mm", between(0, 1000), 20, "balance point ahead of the root leading edge");
            double behind =
                    one.optional("behind_mm", between(0, 3000), 92, "balance point behind the root leading edge");
            if (one.has("ahead_mm") && one.has("behind_mm")) {
                one.problem("behind_mm", "ahead_mm is given as well", "leave out one of the two");
            }
            if (of.isEmpty()) {
                one.needed("of", "which pieces were weighed", "[pod, boom]");
            }
            return new Weighing(one, of, mass, Double.isNaN(ahead) ? -behind : ahead);
        });
    }

    /** The glider with the masses adjusted to all weighings, in the order of the file. */
    static Glider apply(Glider glider, Map<String, Weighing> weighings) {
        Glider result = glider;
        for (Weighing one : weighings.values()) {
            result = apply(result, one);
        }
        return result;
    }

    private static Glider apply(Glider glider, Weighing weighing) {
        Map<String, Piece> all = new LinkedHashMap<>();
        for (Piece piece : Piece.all(glider)) {
            all.put(piece.name(), piece);
        }
        List<Piece> pieces = new ArrayList<>();
        for (String name : weighing.of) {
            Piece piece = all.get(name);
            if (piece == null) {
                weighing.in.problem(
                        "of",
                        "there is no piece \"" + Ascii.printable(name) + "\"",
                        Spelling.nearest(name, all.keySet()));
                return glider;
            }
            pieces.add(piece);
        }
        double[] masses = adjusted(pieces, weighing);
        Glider result = glider;
        for (int i = 0; i < masses.length; i++) {
            if (!(masses[i] >= 0)) {
                weighing.in.problem(
                        "mass_g",
                        "does not go together with the weights of its pieces: "
                                + pieces.get(i).name() + " would weigh less than nothing",
                        "another balance point, or a piece is missing in of");
                return glider;
            }
            result = withMass(result, pieces.get(i).name(), masses[i]);
        }
        return result;
    }

    private static double[] adjusted(List<Piece> pieces, Weighing weighing) {
        double mass = 0;
        double first = 0;
        double second = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Piece piece : pieces) {
            double m = piece.properties().mass();
            double x = piece.properties().cg().x();
            mass += m;
            first += m * x;
            second += m * x * x;
            low = Math.min(low, x);
            high = Math.max(high, x);
        }
        double missing = weighing.mass - mass;
        double a = missing / mass;
        double b = 0;
        if (!Double.isNaN(weighing.x) && high - low > SAME_PLACE) {
            double missingMoment = weighing.mass * weighing.x - first;
            double det = mass * second - first * first;
            a = (missing * second - missingMoment * first) / det;
            b = (missingMoment * mass - missing * first) / det;
        }
        double[] masses = new double[pieces.size()];
        for (int i = 0; i < masses.length; i++) {
            double m = pieces.get(i).properties().mass();
            masses[i] = m * (1 + a + b * pieces.get(i).properties().cg().x());
        }
        return masses;
    }

    /** The glider with one piece of another mass [kg]. */
    static Glider withMass(Glider g, String piece, double mass) {
        return switch (piece) {
            case Piece.WING -> {
                Wing w = g.wing();
                Wing wing = new Wing(mass, w.planform(), w.dihedral(), w.root(), w.tip(), w.flaperon(), w.peg());
                yield new Glider(
                        g.name(),
                        wing,
                        g.tailplane(),
                        g.fin(),
                        g.boom(),
                        g.pod(),
                        g.parts(),
                        g.noseLead(),
                        g.correction());
            }
            case Piece.TAILPLANE -> {
                Tailplane t = g.tailplane();
                yield g.withTails(
                        new Tailplane(mass, t.planform(), t.x(), t.z(), t.decalage(), t.section(), t.elevatorChord()),
                        g.fin());
            }
            case Piece.FIN -> {
                Fin f = g.fin();
                yield g.withTails(
                        g.tailplane(), new Fin(mass, f.above(), f.below(), f.x(), f.z(), f.section(), f.rudderChord()));
            }
            case Piece.BOOM -> {
                Boom b = g.boom();
                yield g.withBoom(new Boom(
                        mass,
                        b.frontX(),
                        b.endX(),
                        b.z(),
                        b.frontDiameter(),
                        b.endDiameter(),
                        b.stiffness(),
                        b.holes()));
            }
            case Piece.POD -> {
                Pod p = g.pod();
                Pod pod = new Pod(mass, p.cgX(), p.noseX(), p.z(), p.width(), p.height());
                yield new Glider(
                        g.name(),
                        g.wing(),
                        g.tailplane(),
                        g.fin(),
                        g.boom(),
                        pod,
                        g.parts(),
                        g.noseLead(),
                        g.correction());
            }
            case Piece.NOSE_LEAD -> g.withNoseLead(mass);
            default -> {
                Part part = g.parts().get(piece);
                yield g.withPart(piece, part.withMass(mass));
            }
        };
    }
}
