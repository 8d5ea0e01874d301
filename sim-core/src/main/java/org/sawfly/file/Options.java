package org.sawfly.file;

import static org.sawfly.file.Bounds.between;

import java.util.List;
import java.util.Locale;
import org.sawfly.aero.ModelChoice;
import org.sawfly.flight.Flying;
import org.sawfly.flight.PresetRule;
import org.sawfly.flight.PushRule;
import org.sawfly.flight.Steering;
import org.sawfly.glider.BoomCut;
import org.sawfly.glider.CgSetting.Means;
import org.sawfly.glider.RebalanceRule.Keep;
import org.sawfly.motion.Axes;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Unit;

/**
 * How a study goes about its changes.
 *
 * @param cut    where and how the boom is cut
 * @param keep   what is kept; null when not said
 * @param with   what is moved for it
 * @param preset what the launch preset is counted from
 * @param flying how it is flown
 */
record Options(Cut cut, Keep keep, List<Means> with, PresetRule preset, Flying flying) {
    private static final String JOINT = "joint_g";
    /** Glue and cloth at a rear cut, and with a sleeve [kg]; common practice, no source. */
    private static final double REAR_JOINT = 0.5e-3;

    private static final double SLEEVED_JOINT = 2e-3;

    /** All keys at the top. */
    static final String[] KEYS = {"cut", "rebalance", "preset", "axes", "model", "pilot"};

    /**
     * How the boom is cut.
     *
     * @param where          at which end, or between
     * @param x              place of a cut in the middle, forward positive [m]
     * @param jointMass      [kg]
     * @param tailplaneMoves whether it goes along with the fin
     */
    record Cut(BoomCut.Where where, double x, double jointMass, boolean tailplaneMoves) {
        BoomCut of(double length) {
            return new BoomCut(where, x, length, jointMass, tailplaneMoves);
        }
    }

    private enum Hold {
        ON,
        OFF
    }

    private enum Tail {
        MOVES_WITH_FIN,
        STAYS
    }

    static Options read(In in) {
        Cut cut = in.map("cut", "where the boom is cut, by boom.cut_mm", Options::cut);
        Keep[] keep = new Keep[1];
        List<Means> with = in.map("rebalance", "what is kept after the change, and what is moved for it", r -> {
            keep[0] = r.choice("keep", List.of(Keep.NOTHING, Keep.CG, Keep.MARGIN), null, "what stays as it is today");
            return r.choices(
                    "with",
                    List.of(Means.values()),
                    List.of(Means.BATTERY, Means.NOSE_LEAD),
                    "what is moved, in this order");
        });
        PresetRule preset = in.choice(
                "preset",
                List.of(PresetRule.values()),
                PresetRule.FROM_NEW_CRUISE,
                "what the launch preset is counted from");
        return new Options(cut, keep[0], with, preset, flying(in));
    }

    /** Whether the joint of a cut is given. */
    static boolean saysJoint(Node.Keys options) {
        return options.get("cut") instanceof Node.Keys cut && cut.get(JOINT) != null;
    }

    /** What is assumed of the joint of a cut. */
    static Assumed usualJoint(Node.Keys options) {
        boolean elsewhere = options.get("cut") instanceof Node.Keys cut
                && (cut.get("behind_mm") != null
                        || cut.get("at") instanceof Node.Scalar at && !at.text().equals("rear_end"));
        double grams = Unit.GRAM.fromSi(elsewhere ? SLEEVED_JOINT : REAR_JOINT);
        return new Assumed(
                "cut." + JOINT, grams, Band.around(grams, 0.6 * grams), Unit.GRAM, "glue and cloth that a cut adds");
    }

    private static Flying flying(In in) {
        Axes axes = in.choice("axes", List.of(Axes.values()), Axes.PITCH_YAW, "freedoms of motion that are flown");
        ModelChoice model =
                in.choice("model", List.of(ModelChoice.values()), ModelChoice.TAIL_VOLUME, "model of the air forces");
        PushRule[] push = {PushRule.SAME};
        Steering steering = in.map("pilot", "when the pilot pushes over, and which controls he moves", pilot -> {
            push[0] = pilot.choice(
                    "pushes",
                    List.of(PushRule.values()),
                    PushRule.SAME,
                    "when: the same as ever, or at the best moment for each version");
            return steering(pilot, axes);
        });
        if (axes == Axes.ALL && model != ModelChoice.STRIP) {
            in.problem(
                    "axes",
                    "all is not for the fast model: roll after release needs the air forces along the whole span",
                    "model: strip");
        }
        return new Flying(axes, model, steering, push[0]);
    }

    private static Steering steering(In in, Axes axes) {
        String words = "moved by the pilot; off leaves it where preset and trim have it";
        List<Hold> holds = List.of(Hold.values());
        Hold elevator = in.choice("elevator", holds, Hold.ON, words);
        Hold rudder = in.choice("rudder", holds, Hold.ON, words);
        Hold aileron = in.choice("aileron", holds, Hold.ON, words);
        for (String key : List.of("rudder", "aileron")) {
            if (axes != Axes.ALL && in.has(key)) {
                in.problem(key, "is only moved with axes: all", "axes: all and model: strip");
            }
        }
        return new Steering(elevator == Hold.ON, rudder == Hold.ON, aileron == Hold.ON);
    }

    private static Cut cut(In in) {
        BoomCut.Where at = in.choice("at", List.of(BoomCut.Where.values()), null, "which piece of the boom goes");
        double behind = in.optional("behind_mm", between(0, 3000), 430, "front of the piece cut out of the middle");
        Tail tail = in.choice(
                "tailplane", List.of(Tail.values()), Tail.MOVES_WITH_FIN, "what the tailplane does at a rear cut");
        double joint =
                in.optional(JOINT, between(0, 50).usually(0, 5), 0.5, "glue, cloth and sleeve that come in addition");
        if (at == null) {
            at = in.has("behind_mm") ? BoomCut.Where.MIDDLE : BoomCut.Where.REAR_END;
        }
        if (at == BoomCut.Where.MIDDLE && !in.has("behind_mm")) {
            in.needed("behind_mm", "front of the piece cut out of the middle", "430");
        }
        if (at != BoomCut.Where.MIDDLE && in.has("behind_mm")) {
            in.problem("behind_mm", "has no meaning with at: " + at.name().toLowerCase(Locale.ROOT), "at: middle");
        }
        double usualJoint = at == BoomCut.Where.REAR_END ? REAR_JOINT : SLEEVED_JOINT;
        joint = Double.isNaN(joint) ? usualJoint : joint;
        return new Cut(at, Double.isNaN(behind) ? 0 : -behind, joint, tail == Tail.MOVES_WITH_FIN);
    }
}
