package org.sawfly.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.sawfly.flight.FlightPlan;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomHole;
import org.sawfly.glider.BoomSleeve;
import org.sawfly.glider.BoomSlot;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.TubeSection;
import org.sawfly.glider.WallStrength;
import org.sawfly.math.Roots;

/**
 * What each spot of the boom bears against what a launch asks of it: an estimate from beam theory, station by station.
 *
 * <p>Stress on the tube is {@code M/Z} of its share in the bending stiffness; at a hole on its side, over the width of the
 * hole, times {@link HoleFactor}; at the end of a slot {@code 1 + (K - 1) width/length}, as of an ellipse (Lekhnitskii), and
 * beside it on the {@link OpenRing}; where a sleeve ends up to {@value #STEP} times more, by the sleeve's share. Small
 * holes in laid-up sheets bear more than the factor says: the estimate is cautious there.
 */
public final class BoomStrength {
    /** What a sleeve much stiffer than the tube adds to the stress at its end [1]; common practice, no source. */
    static final double STEP = 0.5;

    private static final int STATIONS = 48;
    private static final double SLOWEST = 3;
    /** How closely the speed is looked for [m/s]. */
    private static final double SPEED_STEP = 0.01;
    /** No thrower comes near it [m/s]. */
    private static final double FASTEST = 120;

    private final LaunchCases cases;
    private final Boom boom;
    private final BoomTube tube;
    private final WallMaterial wall;
    private final WallStrength strength;
    private final double holeFactor;
    private final List<Reserve> reserves = new ArrayList<>();

    private BoomStrength(LaunchCases cases) {
        this.cases = cases;
        this.boom = cases.boom().glider().boom();
        this.tube = BoomTube.of(boom);
        this.wall = WallMaterial.of(boom);
        this.strength = boom.build().wall().strength();
        this.holeFactor = HoleFactor.of(wall);
        for (int i = 0; i <= STATIONS; i++) {
            double x = boom.frontX() - boom.length() * i / STATIONS;
            plain(x);
        }
        boom.holes().forEach(this::hole);
        boom.build().slots().forEach(this::slot);
        boom.build().sleeves().forEach(this::sleeve);
        new TailMounts(cases).addTo(reserves);
        reserves.sort(Comparator.comparingDouble(Reserve::x).reversed());
    }

    /** Of the load cases of one launch. */
    public static BoomStrength of(LaunchCases cases) {
        return new BoomStrength(cases);
    }

    /** Of one launch. */
    public static BoomStrength of(FlightPlan plan) {
        return of(LaunchCases.of(plan, LaunchCases.LETTING_GO));
    }

    /** All spots from front to end; several a place. */
    public List<Reserve> all() {
        return List.copyOf(reserves);
    }

    /** The spot with the least reserve: it goes first. */
    public Reserve weakest() {
        return reserves.stream()
                .min(Comparator.comparingDouble(Reserve::factor))
                .orElseThrow();
    }

    /** Least reserve of holes, slots, sleeves and joints, each once, from front to end. */
    public List<Reserve> named() {
        List<Reserve> named = new ArrayList<>();
        for (Reserve reserve : reserves) {
            if (reserve.name().isEmpty()) {
                continue;
            }
            int known = 0;
            while (known < named.size() && !named.get(known).name().equals(reserve.name())) {
                known++;
            }
            if (known == named.size()) {
                named.add(reserve);
            } else if (reserve.factor() < named.get(known).factor()) {
                named.set(known, reserve);
            }
        }
        return named;
    }

    /** The load cases. */
    public LaunchCases cases() {
        return cases;
    }

    /** Where the strengths come from, in words. */
    public String source() {
        return strength.source();
    }

    /** Bending moment that the plain tube bears at x: fibre or folding, whichever comes first [N m]. */
    public double bears(double x) {
        TubeSection section = tube.section(x);
        double fibre = Math.min(strength.tension(), strength.compression()) * section.modulus();
        return Math.min(fibre, WallBuckling.moment(section, wall)) / share(x);
    }

    /** The first spot to go as the throw gets harder, and at which release speed. */
    public record Limit(double speed, Reserve first) {}

    /** Release speed at which the weakest spot is used up; infinite if none is at any speed a hand can reach. */
    public static Limit limit(FlightPlan plan) {
        LaunchCases cases = LaunchCases.of(plan, LaunchCases.LETTING_GO);
        DoubleUnaryOperator spare =
                speed -> Math.log(of(cases.at(plan, speed)).weakest().factor());
        double slow = Math.max(SLOWEST, plan.launch().thrower().runUp());
        double speed = Double.POSITIVE_INFINITY;
        if (spare.applyAsDouble(FASTEST) < 0) {
            speed = spare.applyAsDouble(slow) > 0 ? Roots.between(spare, slow, FASTEST, SPEED_STEP) : slow;
        }
        return new Limit(speed, of(cases.at(plan, Math.min(speed, FASTEST))).weakest());
    }

    /** The tube's part in the bending stiffness at x [1]. */
    private double share(double x) {
        return tube.bareStiffness(x) / tube.stiffness(x);
    }

    /** Adds the worst of the cases for a spot; asked and borne of each by two functions. */
    private void add(double x, String name, Reserve.Mode mode, Asking asking) {
        Reserve worst = null;
        for (Map.Entry<LoadCase, BoomLoad> entry : cases.at(x).entrySet()) {
            for (Asked asked : asking.of(entry.getValue())) {
                Reserve reserve = new Reserve(x, name, mode, entry.getKey(), asked.asked(), asked.borne());
                if (worst == null || reserve.factor() < worst.factor()) {
                    worst = reserve;
                }
            }
        }
        reserves.add(worst);
    }

    private record Asked(double asked, double borne) {}

    @FunctionalInterface
    private interface Asking {
        List<Asked> of(BoomLoad load);
    }

    private List<Asked> fibre(double tension, double compression) {
        return List.of(new Asked(tension, strength.tension()), new Asked(compression, strength.compression()));
    }

    private void plain(double x) {
        TubeSection section = tube.section(x);
        double share = share(x);
        add(x, "", Reserve.Mode.FIBRE, load -> {
            double stress = section.bendingStress(share * load.bending());
            return fibre(stress, stress);
        });
        double folds = WallBuckling.moment(section, wall);
        add(x, "", Reserve.Mode.WALL, load -> List.of(new Asked(share * load.bending(), folds)));
        add(x, "", Reserve.Mode.SHEAR, load -> {
            double twist = Math.abs(load.twist()) * 0.25 * section.outer() / section.secondMoment();
            return List.of(new Asked(section.shearStress(load.shear()) + twist, strength.shear()));
        });
    }

    private void hole(String name, BoomHole hole) {
        double x = hole.x();
        TubeSection section = tube.section(x);
        double half = hole.diameter() / section.outer();
        double share = share(x);
        add(x, name, Reserve.Mode.HOLE, load -> {
            double stress = holeFactor * section.bendingStress(share * load.bending());
            double away = away(load, hole.side());
            return fibre(stress * nearest(Math.PI - away, half), stress * nearest(away, half));
        });
    }

    private void slot(String name, BoomSlot slot) {
        double factor = 1 + (holeFactor - 1) * slot.width() / (slot.frontX() - slot.endX());
        for (double x : new double[] {slot.frontX(), 0.5 * (slot.frontX() + slot.endX()), slot.endX()}) {
            TubeSection section = tube.section(x);
            double half = slot.width() / section.outer();
            double share = share(x);
            OpenRing ring = new OpenRing(section, slot.width());
            add(x, name, Reserve.Mode.SLOT, load -> {
                double away = away(load, slot.side());
                double end = factor * section.bendingStress(share * load.bending());
                double bending = share * load.bending();
                double[] beside = ring.stresses(bending * Math.cos(away), bending * Math.sin(away));
                return fibre(
                        Math.max(beside[0], end * nearest(Math.PI - away, half)),
                        Math.max(beside[1], end * nearest(away, half)));
            });
        }
    }

    /** Angle between the side towards which the boom is bent, where it is pressed, and a side [rad]. */
    private static double away(BoomLoad load, BoomHole.Side side) {
        double towards =
                switch (side) {
                    case TOP -> load.up();
                    case BOTTOM -> -load.up();
                    case LEFT -> -load.right();
                    case RIGHT -> load.right();
                };
        double bending = load.bending();
        return bending == 0 ? 0.5 * Math.PI : Math.acos(Math.max(-1, Math.min(1, towards / bending)));
    }

    /** Greatest cosine over an opening of half an angle, not below 0, when its middle is so far away [rad]. */
    private static double nearest(double away, double half) {
        return Math.max(0, Math.cos(Math.max(0, away - half)));
    }

    /** A sleeve of no length stands for a perfect joint: nothing to look at. */
    private void sleeve(String name, BoomSleeve sleeve) {
        if (sleeve.length() == 0) {
            return;
        }
        for (double end : new double[] {sleeve.frontX(), sleeve.endX()}) {
            TubeSection section = tube.section(end);
            double inside = 0.5 * (sleeve.frontX() + sleeve.endX());
            double factor = 1 + STEP * (1 - share(inside));
            add(end, name, Reserve.Mode.STEP, load -> {
                double stress = factor * section.bendingStress(load.bending());
                return fibre(stress, stress);
            });
        }
        double x = Double.isNaN(sleeve.cutX()) ? 0.5 * (sleeve.frontX() + sleeve.endX()) : sleeve.cutX();
        TubeSection ring = tube.section(sleeve, x);
        double part = Double.isNaN(sleeve.cutX()) ? 1 - share(x) : 1;
        add(
                x,
                name,
                Reserve.Mode.SLEEVE,
                load -> List.of(new Asked(ring.bendingStress(part * load.bending()), sleeve.strength())));
        double radius = 0.5
                * (sleeve.fit() == BoomSleeve.Fit.INSIDE
                        ? tube.section(x).inner()
                        : tube.section(x).outer());
        double shorter = Math.min(sleeve.frontX() - x, x - sleeve.endX());
        add(
                x,
                name,
                Reserve.Mode.GLUE,
                load -> List.of(new Asked(
                        part * load.bending() / (Math.PI * radius * radius * shorter), MountBond.GLUE_SHEAR)));
    }
}
