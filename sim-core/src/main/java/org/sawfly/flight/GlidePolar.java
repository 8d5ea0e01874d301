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
 * Sink over speed for each camber setting, every point trimmed. The least sink and the best glide are sought by walking
 * along the curve from the cruising speed, each when it is first asked for and on the thread that asks; so is the whole
 * curve.
 *
 * @param settings by name, in the order of the file
 */
public record GlidePolar(Map<String, Curve> settings) {
    private static final double SLOWEST = 3;
    private static final double FASTEST = 14;
    /** Steps of the curve, and those in which the best of it is looked for [m/s]. */
    private static final double STEP = 0.25, STRIDE = 0.5;
    /** The walk ends where things are worse than the best by this share: small dents do not stop it [1]. */
    private static final double WORSE = 0.03;
    /** To which the speeds of least sink and best glide are found [m/s]. */
    private static final double SPEED_TOLERANCE = 1e-5;

    /** Of a craft in the air of the field. A setting in which nothing can be trimmed is left out. */
    public static GlidePolar of(Craft craft, GlideSettings settings, Air air) {
        Map<String, Curve> curves = new LinkedHashMap<>();
        for (Map.Entry<String, Double> setting : settings.camberDown().entrySet()) {
            double camber =
                    Deflections.angle(setting.getValue(), craft.deflections().flaperonChord());
            Walk walk = new Walk(craft, camber, air, STRIDE);
            if (walk.start()) {
                curves.put(setting.getKey(), new Curve(craft, air, camber, walk));
            }
        }
        return new GlidePolar(curves);
    }

    /** One setting. */
    public static final class Curve {
        private final Craft craft;
        private final Air air;
        private final double camber;
        private final Walk walk;
        private Glide leastSink;
        private Glide bestGlide;

        private Curve(Craft craft, Air air, double camber, Walk walk) {
            this.craft = craft;
            this.air = air;
            this.camber = camber;
            this.walk = walk;
        }

        /** Camber, trailing edge down positive [rad]. */
        public double camber() {
            return camber;
        }

        /** The trimmed glide that sinks least. */
        public synchronized Glide leastSink() {
            if (leastSink == null) {
                leastSink = walk.best(Glide::sink);
            }
            return leastSink;
        }

        /** The trimmed glide that goes furthest; the least sink is sought before it, so that who asks first changes nothing. */
        public synchronized Glide bestGlide() {
            if (bestGlide == null) {
                leastSink();
                bestGlide = walk.best(glide -> -glide.ratio());
            }
            return bestGlide;
        }

        /** Trimmed glides by growing speed, worked out now; speeds without trim are left out. */
        public List<Glide> points() {
            Walk whole = new Walk(craft, camber, air, STEP);
            return whole.start() ? whole.all() : List.of();
        }
    }

    /** What of a glide is to be small. */
    @FunctionalInterface
    private interface Aim {
        double of(Glide glide);
    }

    /** Glides at the speeds of a grid, each sought from its neighbour's. */
    private static final class Walk {
        private final Trim trim;
        private final double camber;
        private final double step;
        private final Glide[] glides;
        private final boolean[] sought;
        private int start;

        Walk(Craft craft, double camber, Air air, double step) {
            this.trim = new Trim(craft.model(), craft.mass().mass(), Craft.sample(air));
            this.camber = camber;
            this.step = step;
            this.glides = new Glide[(int) Math.round((FASTEST - SLOWEST) / step) + 1];
            this.sought = new boolean[glides.length];
            double cruise = Math.max(SLOWEST, Math.min(FASTEST, craft.cruise().speed()));
            this.start = (int) Math.round((cruise - SLOWEST) / step);
        }

        /** Finds a first glide, at the cruising speed or else the nearest faster or slower one; false if there is none. */
        boolean start() {
            int wanted = start;
            for (int away = 0; away < glides.length; away++) {
                if (first(wanted + away) || first(wanted - away)) {
                    return true;
                }
            }
            return false;
        }

        private boolean first(int i) {
            if (i < 0 || i >= glides.length) {
                return false;
            }
            start = i;
            glides[i] = anew(i);
            sought[i] = true;
            return glides[i] != null;
        }

        private double speed(int i) {
            return SLOWEST + i * step;
        }

        private Glide anew(int i) {
            try {
                return trim.atSpeed(camber, speed(i));
            } catch (NoTrimException e) {
                return null;
            }
        }

        /** The glide at a speed of the grid from one at a neighbour; null beyond the grid or where that leads nowhere. */
        private Glide next(int i, Glide neighbour) {
            if (i < 0 || i >= glides.length) {
                return null;
            }
            if (!sought[i]) {
                sought[i] = true;
                glides[i] = trim.near(camber, speed(i), neighbour);
            }
            return glides[i];
        }

        Glide best(Aim aim) {
            int best = start;
            for (int way = -1; way <= 1; way += 2) {
                int i = start + way;
                Glide glide = next(i, glides[start]);
                while (glide != null && aim.of(glide) < worst(aim.of(glides[best]))) {
                    best = aim.of(glide) < aim.of(glides[best]) ? i : best;
                    i += way;
                    glide = next(i, glide);
                }
            }
            return next(best - 1, glides[best]) == null || next(best + 1, glides[best]) == null
                    ? glides[best]
                    : refined(best, aim);
        }

        private static double worst(double best) {
            return best + WORSE * Math.abs(best);
        }

        private Glide refined(int i, Aim aim) {
            double speed = Minimum.between(
                    v -> {
                        Glide glide = trim.near(camber, v, glides[i]);
                        return glide == null ? Double.MAX_VALUE : aim.of(glide);
                    },
                    speed(i - 1),
                    speed(i),
                    speed(i + 1),
                    SPEED_TOLERANCE);
            Glide glide = trim.near(camber, speed, glides[i]);
            return glide == null ? glides[i] : glide;
        }

        List<Glide> all() {
            List<Glide> all = new ArrayList<>();
            for (int way = -1; way <= 1; way += 2) {
                Glide glide = glides[start];
                for (int i = start + way; glide != null; i += way) {
                    Glide near = next(i, glide);
                    boolean inside = i >= 0 && i < glides.length;
                    glide = near == null && inside ? anew(i) : near;
                    if (inside) {
                        glides[i] = glide;
                    }
                }
            }
            for (Glide glide : glides) {
                if (glide != null) {
                    all.add(glide);
                }
            }
            return List.copyOf(all);
        }
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
