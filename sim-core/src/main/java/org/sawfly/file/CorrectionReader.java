package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import org.sawfly.aero.Corrections;
import org.sawfly.aero.DragFactors;

/** Reads the doubts about the model: neutral when left out. */
final class CorrectionReader {
    private static final Bounds FACTOR = between(1, 1000).usually(50, 200);
    private static final Bounds SHIFT = between(-30, 30);

    private CorrectionReader() {}

    static Corrections read(In in) {
        return in.map(
                "correction",
                "factors on the model, for calibration and doubt; 100 is neutral",
                CorrectionReader::keys);
    }

    private static Corrections keys(In in) {
        double all = factor(in, "drag_pct", "section drag of wing and tails");
        DragFactors drag = new DragFactors(
                all * factor(in, "wing_drag_pct", "section drag of the wing"),
                all * factor(in, "tail_drag_pct", "section drag of tailplane and fin"),
                factor(in, "body_drag_pct", "drag of pod, boom and peg"),
                factor(in, "induced_drag_pct", "drag that comes with lift"));
        return new Corrections(
                drag,
                factor(in, "tail_slope_pct", "normal force of tailplane and fin"),
                factor(in, "fin_beyond_stall_pct", "normal force of the fin beyond its stall"),
                factor(in, "downwash_pct", "downwash at the tailplane"),
                factor(in, "boom_stiffness_pct", "bending stiffness of the boom"),
                factor(in, "yaw_inertia_pct", "inertia about the yaw axis"),
                in.neutral(
                        "neutral_point_back_mm", SHIFT, 0, "neutral point further back; below 0 is further forward"));
    }

    private static double factor(In in, String key, String words) {
        return in.neutral(key, FACTOR, 100, "factor on the " + words);
    }
}
