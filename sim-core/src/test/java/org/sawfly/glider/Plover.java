package org.sawfly.glider;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.sawfly.math.Vec3;
import org.sawfly.section.Section;
import org.sawfly.section.SectionEstimate;
import org.sawfly.section.SectionShape;

/** An invented 1.5 m discus glider for tests, nobody's product: 231.4 g, balancing 69.0 mm behind the root leading edge. */
public final class Plover {
    private static final double BOOM_Z = 0.012;
    private static final double GRAVITY = 9.80665;
    private static final double FLAPERON = 0.32;
    private static final double ELEVATOR = 0.40;
    private static final double RUDDER = 0.45;

    private Plover() {}

    /** With its sections estimated from thickness and camber. */
    public static Glider glider() {
        return glider(
                estimate(0.062, 0.019, FLAPERON),
                estimate(0.054, 0.017, FLAPERON),
                estimate(0.060, 0, ELEVATOR),
                estimate(0.060, 0, RUDDER));
    }

    /** With the sections a test needs: wing root, wing tip, both tails. */
    public static Glider glider(Section root, Section tip, Section tail) {
        return glider(root, tip, tail, tail);
    }

    private static Glider glider(Section root, Section tip, Section tailplane, Section fin) {
        Map<String, Part> parts = new LinkedHashMap<>();
        parts.put("wing servos and leads", Part.fixed(0.0116, new Vec3(-0.058, 0, 0)));
        parts.put("wing bolts", Part.fixed(0.0016, new Vec3(-0.062, 0, 0)));
        parts.put("tail servos", Part.fixed(0.0094, new Vec3(0.128, 0, BOOM_Z)));
        parts.put("receiver", Part.fixed(0.0038, new Vec3(0.078, 0, BOOM_Z)));
        parts.put("battery", new Part(0.0152, new Vec3(0.205, 0, BOOM_Z), Part.Mount.FIXED, 0.008, 0.015));
        parts.put("switch and wiring", Part.fixed(0.0024, new Vec3(0.150, 0, BOOM_Z)));
        parts.put("tailplane mount", new Part(0.0011, new Vec3(-0.664, 0, BOOM_Z), Part.Mount.BOOM_END, 0, 0));
        parts.put("strings and springs", new Part(0.0009, new Vec3(-0.360, 0, BOOM_Z), Part.Mount.ALONG_BOOM, 0, 0));
        parts.put("glue and cloth", new Part(0.0009, new Vec3(-0.735, 0, BOOM_Z), Part.Mount.BOOM_END, 0, 0));
        return new Glider(
                "plover",
                wing(root, tip),
                tailplane(tailplane),
                fin(fin),
                boom(),
                new Pod(0.0285, 0.076, 0.265, BOOM_Z, 0.027, 0.034),
                parts,
                Part.fixed(0.0139, new Vec3(0.250, 0, BOOM_Z)),
                Correction.NONE);
    }

    private static Wing wing(Section root, Section tip) {
        Planform half = planform(
                new double[][] {{0, 168, 0}, {260, 160, 5}, {500, 140, 16}, {660, 108, 36}, {730, 74, 60}, {750, 48, 80}
                });
        return new Wing(0.114, half, Math.toRadians(6.5), root, tip, new Flap(FLAPERON, 0.020, 0.720), Hand.RIGHT);
    }

    private static Tailplane tailplane(Section section) {
        Planform half = planform(new double[][] {{0, 72, 0}, {114, 59, 9}, {162, 32, 27}});
        return new Tailplane(0.0064, half, -0.640, BOOM_Z - 0.014, Math.toRadians(1.2), section, ELEVATOR);
    }

    private static Fin fin(Section section) {
        Planform above = planform(new double[][] {{0, 72, 0}, {75, 58, 12}, {112, 34, 32}});
        Planform below = planform(new double[][] {{0, 72, 0}, {62, 56, 12}, {94, 32, 31}});
        return new Fin(0.0069, above, below, -0.722, BOOM_Z, section, RUDDER);
    }

    private static Boom boom() {
        Map<String, BoomHole> holes = new LinkedHashMap<>();
        holes.put("elevator string", new BoomHole(-0.585, 0.002, BoomHole.Side.TOP));
        holes.put("rudder string", new BoomHole(-0.668, 0.002, BoomHole.Side.LEFT));
        BoomStiffness bendTest = new BoomStiffness.OfBendTest(-0.168, -0.663, 0.5 * GRAVITY, 0.0057);
        return new Boom(0.0148, -0.118, -0.790, BOOM_Z, 0.0170, 0.0085, bendTest, holes);
    }

    private static Planform planform(double[][] millimetres) {
        return new Planform(Arrays.stream(millimetres)
                .map(row -> new Station(row[0] / 1000, row[1] / 1000, row[2] / 1000))
                .toList());
    }

    private static Section estimate(double thickness, double camber, double flapChord) {
        return new SectionEstimate(SectionShape.of(thickness, camber, flapChord));
    }
}
