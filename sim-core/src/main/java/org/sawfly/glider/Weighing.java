package org.sawfly.glider;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.sawfly.math.Vec3;

/**
 * An assembled piece that was weighed, and perhaps balanced, as a whole: its parts are adjusted until they agree.
 *
 * <p>The masses change as little as they can in proportion: the smallest {@code sum d_i^2/m_i} with
 * {@code sum d_i = D} and {@code sum d_i x_i = E} is {@code d_i = m_i (a + b (x_i - X))}, X their common balance point. A
 * single part, or the pod alone, is moved to where it balances.
 *
 * @param of names of the pieces, as {@link Piece} has them
 * @param mass of the whole [kg]
 * @param x balance point of the whole in build axes, forward positive, if known [m]
 */
public record Weighing(Set<String> of, double mass, OptionalDouble x) {
    /** No piece may get lighter or heavier than by this factor: then something was measured wrong. */
    private static final double MOST = 2;

    /** Pieces whose places differ less than this can not make up for a balance point [m]. */
    private static final double LEAST_SPREAD = 0.002;

    /** A balance point closer than this agrees [m]. */
    private static final double AGREES = 0.0005;

    public Weighing {
        of = Set.copyOf(of);
        Check.positive(mass, "the mass of a weighed piece [kg]");
        x.ifPresent(place -> Check.finite(place, "the balance point of a weighed piece [m]"));
    }

    /**
     * What came of it.
     *
     * @param glider with its parts adjusted
     * @param added by piece, what was added to its mass, negative when taken off [kg]
     */
    public record Result(Glider glider, Map<String, Double> added) {}

    /** The glider with the pieces adjusted. */
    public Result applyTo(Glider glider) {
        List<Piece> pieces = pieces(glider);
        MassProperties sum = MassProperties.sum(pieces, Correction.NONE);
        double centre = sum.cg().x();
        double spread = 0;
        for (Piece piece : pieces) {
            double offset = piece.properties().cg().x() - centre;
            spread += piece.properties().mass() * offset * offset;
        }
        double wanted = x.orElse(centre);
        double ratio = mass / sum.mass() - 1;
        boolean spreads = Math.sqrt(spread / sum.mass()) > LEAST_SPREAD;
        double tilt = spreads ? mass * (wanted - centre) / spread : 0;
        Glider adjusted = glider;
        Map<String, Double> added = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            double factor = 1 + ratio + tilt * (piece.properties().cg().x() - centre);
            checkFactor(piece, factor);
            added.put(piece.name(), (factor - 1) * piece.properties().mass());
            adjusted = scaled(adjusted, piece.name(), factor);
        }
        if (!spreads && Math.abs(wanted - centre) > AGREES) {
            adjusted = movedTo(adjusted, pieces, wanted);
        }
        return new Result(adjusted, added);
    }

    private List<Piece> pieces(Glider glider) {
        List<Piece> all = Piece.all(glider);
        List<Piece> named = new ArrayList<>();
        for (Piece piece : all) {
            if (of.contains(piece.name())) {
                named.add(piece);
            }
        }
        if (named.size() != of.size()) {
            throw new DesignException("a weighing names something the glider does not have; it has "
                    + String.join(", ", all.stream().map(Piece::name).toList()));
        }
        return named;
    }

    private void checkFactor(Piece piece, double factor) {
        if (!(factor >= 1 / MOST && factor <= MOST)) {
            throw new DesignException("the weighing of " + String.join(", ", of) + " (" + Words.mass(mass)
                    + x.stream()
                            .mapToObj(place -> ", balancing " + Words.place(place))
                            .findFirst()
                            .orElse("")
                    + ") would make " + piece.name() + " "
                    + Words.mass(factor * piece.properties().mass()) + " instead of "
                    + Words.mass(piece.properties().mass()) + ". Maybe a part is missing from the list.");
        }
    }

    private static Glider scaled(Glider glider, String name, double factor) {
        return switch (name) {
            case Piece.WING -> withWing(glider, factor);
            case Piece.TAILPLANE -> glider.withTails(glider.tailplane().heavier(factor), glider.fin());
            case Piece.FIN -> glider.withTails(glider.tailplane(), glider.fin().heavier(factor));
            case Piece.BOOM -> glider.withBoom(heavier(glider.boom(), factor));
            case Piece.POD -> withPod(glider, factor, glider.pod().cgX());
            case Piece.NOSE_LEAD -> glider.withNoseLead(glider.noseLead().mass() * factor);
            default -> {
                Part part = glider.parts().get(name);
                yield glider.withPart(name, part.withMass(part.mass() * factor));
            }
        };
    }

    private static Glider movedTo(Glider glider, List<Piece> pieces, double x) {
        String name = pieces.get(0).name();
        Part part = glider.parts().get(name);
        if (pieces.size() == 1 && name.equals(Piece.POD)) {
            return withPod(glider, 1, x);
        }
        if (pieces.size() == 1 && part != null) {
            Vec3 place = new Vec3(x, part.place().y(), part.place().z());
            return glider.withPart(
                    name, new Part(part.mass(), place, part.mount(), part.slideForward(), part.slideBack()));
        }
        throw new DesignException(
                "the balance point of "
                        + String.join(", ", pieces.stream().map(Piece::name).toList())
                        + " follows from its shape and cannot be given on its own. Maybe weigh it together with something fixed to it.");
    }

    private static Glider withWing(Glider g, double factor) {
        Wing w = g.wing();
        Wing heavier =
                new Wing(w.mass() * factor, w.planform(), w.dihedral(), w.root(), w.tip(), w.flaperon(), w.peg());
        return new Glider(
                g.name(), heavier, g.tailplane(), g.fin(), g.boom(), g.pod(), g.parts(), g.noseLead(), g.correction());
    }

    private static Glider withPod(Glider g, double factor, double cgX) {
        Pod p = g.pod();
        Pod pod = new Pod(p.mass() * factor, cgX, p.noseX(), p.z(), p.width(), p.height());
        return new Glider(
                g.name(), g.wing(), g.tailplane(), g.fin(), g.boom(), pod, g.parts(), g.noseLead(), g.correction());
    }

    /** Heavier by a thicker wall; a bend test keeps its say, a material makes it stiffer in proportion. */
    private static Boom heavier(Boom b, double factor) {
        return new Boom(
                b.mass() * factor,
                b.frontX(),
                b.endX(),
                b.z(),
                b.frontDiameter(),
                b.endDiameter(),
                b.stiffness(),
                b.holes(),
                b.build());
    }
}
