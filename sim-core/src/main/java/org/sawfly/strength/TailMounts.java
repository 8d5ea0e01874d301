package org.sawfly.strength;

import java.util.List;
import org.sawfly.flight.RearLoads;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Piece;
import org.sawfly.glider.Tailplane;
import org.sawfly.math.Vec3;

/**
 * The joints of both tails with the boom. The tailplane's is half its root chord long, the fin's its whole root chord, both
 * half as wide as the boom: what is usual (common practice, no source).
 */
final class TailMounts {
    private final LaunchCases cases;
    private final Glider glider;
    private final BoomTube tube;

    TailMounts(LaunchCases cases) {
        this.cases = cases;
        this.glider = cases.boom().glider();
        this.tube = BoomTube.of(glider.boom());
    }

    void addTo(List<Reserve> reserves) {
        Tailplane tailplane = glider.tailplane();
        double chord = tailplane.planform().chordAt(0);
        add(reserves, Piece.TAILPLANE, tailplane.x() - 0.5 * chord, 0.5 * chord);
        Fin fin = glider.fin();
        double root = Math.max(fin.above().chordAt(0), fin.below().chordAt(0));
        add(reserves, Piece.FIN, fin.x() - 0.5 * root, root);
    }

    private void add(List<Reserve> reserves, String tail, double middle, double length) {
        double x = Math.max(middle, glider.boom().endX());
        double width = 0.5 * tube.diameter(x);
        MountBond bond = MountBond.glued(length, width);
        boolean isFin = tail.equals(Piece.FIN);
        double seat = glider.boom().z() - (isFin ? 0 : 0.5 * tube.diameter(x));
        Reserve worst = null;
        for (LoadCase loadCase : LoadCase.values()) {
            BoomLoad load = load(tail, middle, seat, cases.rear(loadCase));
            double shear = bond.shearStress(load.across(), load.right());
            double peel = bond.peelStress(load.lift(), load.twist());
            Reserve byShear = new Reserve(x, tail + " joint", Reserve.Mode.MOUNT, loadCase, shear, bond.shear());
            Reserve byPeel = new Reserve(x, tail + " joint", Reserve.Mode.MOUNT, loadCase, peel, bond.peel());
            for (Reserve reserve : List.of(byShear, byPeel)) {
                if (worst == null || reserve.factor() < worst.factor()) {
                    worst = reserve;
                }
            }
        }
        reserves.add(worst);
    }

    /** Forces and moments that a tail alone puts on its seat. */
    private BoomLoad load(String tail, double x, double seat, RearLoads rear) {
        Vec3 cg = cases.boom().cg();
        LoadSum sum = new LoadSum();
        for (Piece piece : Piece.all(glider)) {
            if (piece.name().equals(tail)) {
                MassProperties p = piece.properties();
                sum.add(
                        p.cg().x() - x,
                        p.cg().z() - seat,
                        rear.specificForceAt(p.cg().minus(cg)).times(-p.mass()),
                        p.inertia().times(rear.turning()).times(-1));
            }
        }
        if (tail.equals(Piece.FIN)) {
            Vec3 place = cases.boom().fin();
            sum.add(place.x() - x, place.z() - seat, new Vec3(0, rear.finForce(), 0), new Vec3(0, 0, rear.finMoment()));
        } else {
            Vec3 place = cases.boom().tailplane();
            sum.add(
                    place.x() - x,
                    place.z() - seat,
                    new Vec3(0, 0, rear.tailplaneForce()),
                    new Vec3(0, rear.tailplaneMoment(), 0));
        }
        return sum.load();
    }
}
