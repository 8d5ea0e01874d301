package org.sawfly.glider;

import java.util.List;
import org.sawfly.math.Inertia;
import org.sawfly.math.Vec3;

/**
 * Mass, balance and inertia of a part or of the whole glider.
 *
 * @param mass [kg]
 * @param cg centre of gravity in build axes (x forward, y right, z down, origin at the wing's root leading edge) [m]
 * @param inertia about the centre of gravity, axes parallel to build axes [kg m2]
 */
public record MassProperties(double mass, Vec3 cg, Inertia inertia) {
    /** Of a whole glider, all its parts and what weighing corrected. */
    public static MassProperties of(Glider glider) {
        return sum(Piece.all(glider), glider.correction());
    }

    /** Of pieces together and a correction: masses and moments add up, inertias about the common CG. */
    static MassProperties sum(List<Piece> pieces, Correction correction) {
        double mass = correction.mass();
        Vec3 moment = correction.moment();
        for (Piece piece : pieces) {
            mass += piece.properties().mass();
            moment =
                    moment.plus(piece.properties().cg().times(piece.properties().mass()));
        }
        if (mass <= 0) {
            throw new IllegalArgumentException("the parts must weigh something together (they weigh " + mass + " kg)");
        }
        Vec3 cg = moment.times(1 / mass);
        Inertia inertia = correction.inertia();
        for (Piece piece : pieces) {
            MassProperties p = piece.properties();
            inertia = inertia.plus(p.inertia()).plus(Inertia.ofPoint(p.mass(), p.cg().minus(cg)));
        }
        return new MassProperties(mass, cg, inertia);
    }
}
