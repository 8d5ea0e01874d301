package org.sawfly.glider;

import java.util.ArrayList;
import java.util.List;

/**
 * The glider on the balance, part by part: what a gram costs where, how much lead another CG takes. Places in build axes,
 * forward positive [m]; lead at the place it has.
 *
 * <p>A gram at x asks for {@code (x_cg - x)/(x_lead - x_cg)} grams of lead if the CG is to stay. A CG at x takes
 * {@code m (x - x_cg)/(x_lead - x)} more lead.
 */
public final class Balance {
    private final Glider glider;
    private final MassProperties total;

    private Balance(Glider glider) {
        this.glider = glider;
        total = MassProperties.of(glider);
    }

    /**
     * One line of the balance.
     *
     * @param name of the piece
     * @param mass [kg]
     * @param x its balance point [m]
     * @param leadPerMass lead that a unit of mass there costs, negative when it saves lead [1]
     */
    public record Row(String name, double mass, double x, double leadPerMass) {}

    public static Balance of(Glider glider) {
        return new Balance(glider);
    }

    /** Mass, CG and inertia of the whole. */
    public MassProperties total() {
        return total;
    }

    /** All pieces; what weighing corrected is not among them. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (Piece piece : Piece.all(glider)) {
            double x = piece.properties().cg().x();
            rows.add(new Row(piece.name(), piece.properties().mass(), x, leadPerMass(x)));
        }
        return rows;
    }

    /** Lead that a unit of mass at x costs if the CG is to stay, negative when it saves lead [1]. */
    public double leadPerMass(double x) {
        return (total.cg().x() - x)
                / (glider.noseLead().place().x() - total.cg().x());
    }

    /** Nose lead for a CG at x [kg]; negative when not even all lead out would do. */
    public double leadFor(double cgX) {
        return glider.noseLead().mass()
                + total.mass()
                        * (cgX - total.cg().x())
                        / (glider.noseLead().place().x() - cgX);
    }

    /** How far the CG moves when a part moves, both the same way [1]. */
    public double cgPerSlide(Part part) {
        return part.mass() / total.mass();
    }

    /** Nose lead saved when a part moves forward and the CG stays [kg/m]. */
    public double leadSavedPerSlide(Part part) {
        return part.mass() / (glider.noseLead().place().x() - total.cg().x());
    }
}
