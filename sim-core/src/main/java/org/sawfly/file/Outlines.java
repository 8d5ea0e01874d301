package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.glider.Planform;
import org.sawfly.glider.Station;
import org.sawfly.quantity.Unit;

/** Outlines of surfaces: as listed station by station, or drawn from a few measures on the lines of the demo glider. */
final class Outlines {
    /** Out, chord, leading edge back [mm] of the demo glider's surfaces. */
    private static final double[][] WING = {
        {0, 168, 0}, {260, 160, 5}, {500, 140, 16}, {660, 108, 36}, {730, 74, 60}, {750, 48, 80}
    };

    private static final double[][] TAILPLANE = {{0, 72, 0}, {114, 59, 9}, {162, 32, 27}};
    private static final double[][] FIN_ABOVE = {{0, 72, 0}, {75, 58, 12}, {112, 34, 32}};
    private static final double[][] FIN_BELOW = {{0, 72, 0}, {62, 56, 12}, {94, 32, 31}};
    private static final int TWO_THIRDS = 2;

    private Outlines() {}

    /** Stations of one half, or null when none are given or they make no outline. */
    static Planform stations(In in, String key, String words) {
        List<Station> stations = in.list(key, words, Outlines::station);
        if (!in.has(key) || stations.isEmpty()) {
            return null;
        }
        if (stations.size() < 2) {
            in.problem(key, "two stations at least are needed, root and tip", "");
            return null;
        }
        if (stations.get(0).out() != 0) {
            in.problem(key, "the first station must be the root, out_mm: 0", "the chord at the middle of the glider");
            return null;
        }
        for (int i = 1; i < stations.size(); i++) {
            if (stations.get(i).out() <= stations.get(i - 1).out()) {
                in.problem(
                        key,
                        "station " + (i + 1) + " must lie further out than station " + i + " (out of order)",
                        "from root to tip");
                return null;
            }
        }
        return new Planform(stations);
    }

    private static Station station(In in) {
        return new Station(
                in.number("out_mm", between(0, 2000), 500, "out from the root, along the surface"),
                in.number("chord_mm", between(2, 600), 140, "chord there"),
                in.neutral("back_mm", between(0, 600), 0, "leading edge behind that of the root"));
    }

    /**
     * A wing from three measures. Inside two thirds of the half span the chord falls as the demo wing's, stretched to
     * meet the measured chord; outside it keeps the demo wing's proportion to that chord. The leading edge takes the same
     * share of the loss of chord. On a straight taper of 0.5 the area comes out 0.8 % too large.
     *
     * @param halfSpan      [m]
     * @param root          chord [m]
     * @param twoThirds     chord at two thirds of the half span [m]
     */
    static Planform wing(double halfSpan, double root, double twoThirds) {
        double[] tip = WING[WING.length - 1];
        double[] knee = WING[TWO_THIRDS];
        double demoRoot = WING[0][1];
        double loss = (1 - twoThirds / root) / (1 - knee[1] / demoRoot);
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < WING.length; i++) {
            double[] demo = WING[i];
            double chord =
                    i < TWO_THIRDS ? root * (1 - (1 - demo[1] / demoRoot) * loss) : twoThirds * demo[1] / knee[1];
            double share = i == 0 ? 0 : demo[2] / (demoRoot - demo[1]);
            stations.add(new Station(halfSpan * demo[0] / tip[0], chord, share * (root - chord)));
        }
        return new Planform(stations);
    }

    /** A tailplane half of the demo's shape with this area of both halves [m2] and aspect ratio. */
    static Planform tailplane(double area, double aspectRatio) {
        Planform demo = scaled(TAILPLANE, 1, 1);
        double longer = Math.sqrt(aspectRatio / demo.aspectRatio());
        double larger = Math.sqrt(area / (2 * demo.area()));
        return scaled(TAILPLANE, larger * longer, larger / longer);
    }

    /** The fin's part above or below the boom, of the demo's shape. */
    static Planform fin(boolean isAbove, double area, double aspectRatio, double shareBelow) {
        Planform above = scaled(FIN_ABOVE, 1, 1);
        Planform below = scaled(FIN_BELOW, 1, 1);
        double demoArea = above.area() + below.area();
        double demoHeight = above.span() + below.span();
        double longer = Math.sqrt(aspectRatio / (demoHeight * demoHeight / demoArea));
        double larger = Math.sqrt(area / demoArea);
        double share = isAbove ? (1 - shareBelow) / (above.area() / demoArea) : shareBelow / (below.area() / demoArea);
        return scaled(isAbove ? FIN_ABOVE : FIN_BELOW, larger * longer * share, larger / longer);
    }

    /** Lengths of the list in mm, stretched out and along the chord. */
    private static Planform scaled(double[][] demo, double out, double along) {
        List<Station> stations = new ArrayList<>();
        for (double[] one : demo) {
            stations.add(new Station(
                    Unit.MILLIMETRE.toSi(one[0]) * out,
                    Unit.MILLIMETRE.toSi(one[1]) * along,
                    Unit.MILLIMETRE.toSi(one[2]) * along));
        }
        return new Planform(stations);
    }
}
