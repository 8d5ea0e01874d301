package org.sawfly.flight;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sawfly.air.Air;
import org.sawfly.math.Minimum;
import org.sawfly.motion.Glide;
import org.sawfly.motion.NoTrimException;
import org.sawfly.motion.Trim;

/**
 * Sink over speed for each camber setting, every point trimmed.
 *
 * @param settings by name, in the order of the file
 */
public record GlidePolar(Map<String, Curve> settings) {
    /**
     * One setting.
     *
     * @param camber trailing edge down positive [rad]
     * @param points by growing speed; speeds without trim are left out
     * @param leastSink the trimmed glide that sinks least
     * @param bestGlide the trimmed glide that goes furthest
     */
    public record Curve(double camber, List<Glide> points, Glide leastSink, Glide bestGlide) {}

    private static final double SLOWEST = 3;
    private static final double FASTEST = 14;
    private static final double STEP = 0.25;

    /** Of a craft in the air of the field. */
    public static GlidePolar of(Craft craft, GlideSettings settings, Air air) {
        Trim trim = new Trim(craft.model(), craft.mass().mass(), Craft.sample(air));
        Map<String, Curve> curves = new LinkedHashMap<>();
        for (Map.Entry<String, Double> setting : settings.camberDown().entrySet()) {
            double camber =
                    Deflections.angle(setting.getValue(), craft.deflections().flaperonChord());
            Curve curve = curve(trim, camber);
            if (curve != null) {
                curves.put(setting.getKey(), curve);
            }
        }
        return new GlidePolar(curves);
    }

    /** The trimmed glide that sinks least in one setting [rad]. */
    public static Glide leastSink(Craft craft, double camber, Air air) {
        Curve curve = curve(new Trim(craft.model(), craft.mass().mass(), Craft.sample(air)), camber);
        return curve == null ? null : curve.leastSink();
    }

    private static Curve curve(Trim trim, double camber) {
        List<Glide> points = new ArrayList<>();
        for (int i = 0; SLOWEST + i * STEP <= FASTEST; i++) {
            try {
                points.add(trim.atSpeed(camber, SLOWEST + i * STEP));
            } catch (NoTrimException e) {
                // too slow or too fast for this setting: the curve begins or ends there
            }
        }
        if (points.size() < 3) {
            return null;
        }
        return new Curve(
                camber,
                List.copyOf(points),
                best(trim, camber, points, Glide::sink),
                best(trim, camber, points, g -> -g.ratio()));
    }

    /** What of a glide is to be small. */
    @FunctionalInterface
    private interface Aim {
        double of(Glide glide);
    }

    private static Glide best(Trim trim, double camber, List<Glide> points, Aim aim) {
        int best = 0;
        for (int i = 1; i < points.size(); i++) {
            if (aim.of(points.get(i)) < aim.of(points.get(best))) {
                best = i;
            }
        }
        if (best == 0 || best == points.size() - 1) {
            return points.get(best);
        }
        double low = points.get(best - 1).speed();
        double high = points.get(best + 1).speed();
        double speed = Minimum.between(v -> aim.of(trim.atSpeed(camber, v)), low, high, 1e-6);
        return trim.atSpeed(camber, speed);
    }

    /** The least sink of all settings. */
    public Glide leastSink() {
        Glide best = null;
        for (Curve curve : settings.values()) {
            if (best == null || curve.leastSink().sink() < best.sink()) {
                best = curve.leastSink();
            }
        }
        return best;
    }

    /** The best glide ratio of all settings. */
    public Glide bestGlide() {
        Glide best = null;
        for (Curve curve : settings.values()) {
            if (best == null || curve.bestGlide().ratio() > best.ratio()) {
                best = curve.bestGlide();
            }
        }
        return best;
    }
}
