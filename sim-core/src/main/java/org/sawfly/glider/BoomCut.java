package org.sawfly.glider;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sawfly.math.Vec3;

/**
 * A piece cut out of the boom. That much tube goes, with its own taper; what sits behind moves forward; strings become
 * shorter; the joint is added. The stiffness of what is left is that of the boom before, so a bend test of the uncut boom
 * stays good. No length, no cut: the glider is unchanged and there is no joint.
 *
 * @param where at the rear end, the front end or in the middle
 * @param x forward face of the piece when it is cut out of the middle, build axes [m]; without meaning otherwise
 * @param length that goes [m]
 * @param jointMass glue, cloth and sleeve beyond what is there now [kg]
 * @param tailplaneMoves whether the tailplane goes forward with the fin; only for the rear end, else what sits behind moves
 */
public record BoomCut(Where where, double x, double length, double jointMass, boolean tailplaneMoves)
        implements DesignChange {
    /** Where the piece is taken out. */
    public enum Where {
        /** From the very end: the boom ends thicker, fin and whatever sits on the end move. */
        REAR_END,
        /** Where the boom leaves the pod: it begins thinner, everything on it moves. */
        FRONT_END,
        /** Somewhere between, sleeved there; both diameters stay and the taper between them is taken as even. */
        MIDDLE
    }

    private static final String JOINT = "new joint";

    public BoomCut {
        Check.finite(x, "the place of the cut [m]");
        Check.notNegative(length, "the length of the cut [m]");
        Check.notNegative(jointMass, "the mass of the joint [kg]");
    }

    /** Off the rear end, the tailplane moving along. */
    public static BoomCut atRearEnd(double length, double jointMass) {
        return new BoomCut(Where.REAR_END, 0, length, jointMass, true);
    }

    @Override
    public Glider apply(Glider before) {
        if (length == 0) {
            return before;
        }
        double longest = longest(before);
        if (length > longest) {
            throw new DesignException("a cut of " + Words.length(length) + " is too long: "
                    + (longest > 0 ? "at most " + Words.length(longest) + " can go, " : "nothing can go there, ")
                    + reason(before));
        }
        boolean tailplane = where == Where.REAR_END
                ? tailplaneMoves
                : behind(before.tailplane().x());
        Glider after = BoomEnd.moved(before, boom(before.boom()), length, tailplane);
        return jointMass == 0 ? after : after.withPart(freeName(after), joint(after));
    }

    /** The tube that is taken out: its mass, balance point and inertia. */
    public MassProperties offcut(Glider before) {
        double front = frontFace(before.boom());
        return BoomTube.of(before.boom()).piece(front, front - length);
    }

    /** The longest piece that can go there [m]; 0 or less when none can. */
    public double longest(Glider before) {
        double front = before.boom().frontX();
        double firstTail = Math.max(before.tailplane().x(), before.fin().x());
        return switch (where) {
            case REAR_END ->
                tailplaneMoves
                        ? front - firstTail
                        : Math.min(front - before.fin().x(), room(before));
            case FRONT_END -> front - firstTail;
            case MIDDLE -> x > front ? 0 : Math.min(x - before.fin().x(), toTailplane(before));
        };
    }

    /** How far the fin can come forward before it meets the tailplane [m]. */
    private static double room(Glider before) {
        Tailplane tailplane = before.tailplane();
        return tailplane.x() > before.fin().x()
                ? TailClearance.gap(tailplane, before.fin(), TailClearance.FULL_THROW)
                : Double.POSITIVE_INFINITY;
    }

    /** From the cut in the middle back to the tailplane, or what the fin has if the tailplane sits ahead of it [m]. */
    private double toTailplane(Glider before) {
        Tailplane tailplane = before.tailplane();
        double trailingEdge = tailplane.x() - tailplane.planform().chordAt(0);
        return trailingEdge >= x ? room(before) : x - tailplane.x();
    }

    private String reason(Glider before) {
        return switch (where) {
            case REAR_END ->
                tailplaneMoves ? "then the tails meet the pod" : "then the fin meets the tailplane, which stays";
            case FRONT_END -> "then the tails meet the pod";
            case MIDDLE ->
                x > before.boom().frontX()
                        ? "the boom only begins " + Words.place(before.boom().frontX())
                        : "then the cut meets a tail";
        };
    }

    private double frontFace(Boom boom) {
        return switch (where) {
            case REAR_END -> boom.endX() + length;
            case FRONT_END -> boom.frontX();
            case MIDDLE -> x;
        };
    }

    private Boom boom(Boom old) {
        BoomTube tube = BoomTube.of(old);
        double front = frontFace(old);
        return new Boom(
                tube.piece(old.frontX(), front).mass()
                        + tube.piece(front - length, old.endX()).mass(),
                old.frontX(),
                old.endX() + length,
                old.z(),
                where == Where.FRONT_END ? tube.diameter(front - length) : old.frontDiameter(),
                where == Where.REAR_END ? tube.diameter(front) : old.endDiameter(),
                new BoomStiffness.OfMaterial(tube.specificModulus()),
                holes(old, front),
                old.build().without(front, front - length));
    }

    private Map<String, BoomHole> holes(Boom old, double front) {
        Map<String, BoomHole> holes = new LinkedHashMap<>();
        for (Map.Entry<String, BoomHole> entry : old.holes().entrySet()) {
            BoomHole hole = entry.getValue();
            if (hole.x() > front) {
                holes.put(entry.getKey(), hole);
            } else if (hole.x() < front - length) {
                holes.put(entry.getKey(), new BoomHole(hole.x() + length, hole.diameter(), hole.side()));
            }
        }
        return holes;
    }

    private boolean behind(double place) {
        return where == Where.FRONT_END || place < x;
    }

    /** At the rear end the glue is under the fin, else round the cut. */
    private Part joint(Glider after) {
        Boom boom = after.boom();
        Fin fin = after.fin();
        return switch (where) {
            case REAR_END ->
                new Part(
                        jointMass,
                        new Vec3(fin.x() - 0.5 * fin.above().chordAt(0), 0, boom.z()),
                        Part.Mount.BOOM_END,
                        0,
                        0);
            case FRONT_END -> Part.fixed(jointMass, new Vec3(boom.frontX(), 0, boom.z()));
            case MIDDLE -> Part.fixed(jointMass, new Vec3(x, 0, boom.z()));
        };
    }

    private static String freeName(Glider glider) {
        String name = JOINT;
        for (int i = 2; glider.parts().containsKey(name); i++) {
            name = JOINT + " " + i;
        }
        return name;
    }
}
