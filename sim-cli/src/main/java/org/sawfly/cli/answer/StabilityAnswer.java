package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.Swing;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.BalanceQuantities;
import org.sawfly.stability.ClassicalModes;
import org.sawfly.stability.DerivativeQuantities;
import org.sawfly.stability.Derivatives;
import org.sawfly.stability.Margins;
import org.sawfly.stability.Mode;
import org.sawfly.stability.Modes;
import org.sawfly.stability.TailBuildUp;
import org.sawfly.stability.TailVolumes;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** What keeps the glider pointing the right way, and what it does when left to itself. */
public final class StabilityAnswer {
    /** The release is watched this long for the angle at the fin [s]. */
    private static final double EARLY = 0.6;

    private final Answer answer = new Answer("stability");
    private final Case asked;
    private final Result result;

    /**
     * What is looked at besides the result.
     *
     * @param modes of the cruise glide
     * @param classical the short formulas for them
     * @param fast derivatives at the cruise glide by the fast model
     * @param strip the same by strips
     * @param buildUp the neutral point as a sum
     * @param log of the throw
     */
    public record Looked(
            Modes modes,
            ClassicalModes classical,
            Derivatives fast,
            Derivatives strip,
            TailBuildUp buildUp,
            FlightLog log) {}

    private StabilityAnswer(Case asked) {
        this.asked = asked;
        this.result = asked.result();
    }

    /**
     * The whole answer.
     *
     * @param asked the glider and its throw
     * @param looked what was looked at
     * @param derivatives whether the table of derivatives is asked for
     */
    public static Answer of(Case asked, Looked looked, boolean derivatives) {
        StabilityAnswer made = new StabilityAnswer(asked);
        asked.inputs(made.answer.inputs());
        made.title();
        made.pitch();
        made.yaw(looked.log());
        made.modes(looked.modes());
        made.closer(looked);
        if (derivatives) {
            made.derivatives(looked);
        }
        made.end(looked.modes());
        return made.answer;
    }

    private void title() {
        Fields results = answer.results();
        results.putAll(ResultQuantities.ALL, result);
        String speed =
                results.put("cruise_speed_mps", result.plan().craft().cruise().speed(), 1);
        answer.sayFlush(asked.title() + " at " + speed + " m/s, cruise setting, CG "
                + results.put(ResultQuantities.CG, result) + " mm");
    }

    private void pitch() {
        Fields results = answer.results();
        Margins margins = result.margins();
        results.putAll(BalanceQuantities.OF_MARGINS, margins);
        answer.lines("Pitch  neutral point "
                + Case.place(results, "neutral_point_behind_mm", margins.neutralPoint()) + " mm; "
                + margin(margins.margin(), margins.marginShare()) + usual(Usual.STATIC_MARGIN, 0));
        answer.lines("       flown slowly the neutral point lies at "
                + BalanceQuantities.NEUTRAL_POINT_SLOW.text(margins) + " mm");
        String left = BalanceQuantities.LAUNCH_MARGIN_LENGTH.shown(margins) < 0
                ? "the margin is gone by " + positive(BalanceQuantities.LAUNCH_MARGIN_LENGTH, margins) + " mm"
                : BalanceQuantities.LAUNCH_MARGIN_LENGTH.text(margins) + " mm = "
                        + BalanceQuantities.LAUNCH_MARGIN.text(margins) + " % are left";
        answer.lines("       at launch speed the boom bends: " + left);
        answer.lines("       tail volume " + results.put(BalanceQuantities.TAIL_VOLUME_H, result.volumes())
                + usual(Usual.TAIL_VOLUME_H, 2) + ", arm "
                + results.put(BalanceQuantities.TAILPLANE_ARM, result.volumes()) + " mm");
    }

    private static String margin(double length, double share) {
        double millimetres = Numbers.rounded(Unit.MILLIMETRE.fromSi(length), 1);
        String percent = Numbers.fixed(Math.abs(Unit.PERCENT.fromSi(share)), 1);
        String text = Numbers.fixed(Math.abs(millimetres), 1) + " mm = " + percent + " % of the chord";
        return millimetres < 0 ? "the CG is " + text + " BEHIND it" : "margin " + text;
    }

    private static <T> String positive(Quantity<T> quantity, T of) {
        return Numbers.fixed(Math.abs(quantity.shown(of)), quantity.decimals());
    }

    private String usual(Band band, int decimals) {
        Fields usual = answer.results().section("usual");
        String key = decimals == 0 ? "static_margin_pct" : decimals == 2 ? "tail_volume_h" : "tail_volume_v";
        return " (usual " + usual.band(key, band, decimals) + ")";
    }

    private void yaw(FlightLog log) {
        Fields results = answer.results();
        TailVolumes volumes = result.volumes();
        answer.lines("Yaw    tail volume " + results.put(BalanceQuantities.TAIL_VOLUME_V, volumes)
                + usual(Usual.TAIL_VOLUME_V, 3) + ", arm " + results.put(BalanceQuantities.FIN_ARM, volumes)
                + " mm, " + results.put(BalanceQuantities.FIN_BELOW, volumes) + " % below the boom");
        double most = 0;
        for (FlightLog.Row row : log.rows()) {
            most = row.time() < EARLY ? Math.max(most, row.finAngle()) : most;
        }
        String stall = results.put("fin_stall_deg", Unit.DEGREE.fromSi(Swing.FIN_STALL), 0);
        if (most > 0) {
            answer.lines("       the fin stalls past " + stall + " deg at the fin; your release takes it to "
                    + results.put("fin_angle_at_release_deg", Unit.DEGREE.fromSi(most), 0)
                    + " deg");
        }
    }

    private void modes(Modes modes) {
        Table table = new Table(2, 2).left().left();
        for (Mode mode : modes.all()) {
            Fields fields = answer.results().section("left_to_itself").section(key(mode));
            table.row(ModeWords.name(mode.kind()), ModeWords.of(mode, fields));
        }
        answer.lines("Left to itself").table(table);
    }

    private static String key(Mode mode) {
        return switch (mode.kind()) {
            case NOSE_UP_DOWN -> "nose_up_down";
            case SPEED_AND_HEIGHT -> "speed_and_height";
            case NOSE_LEFT_RIGHT -> "nose_left_right";
            case ROLL -> "roll";
            case CIRCLE -> "circle";
        };
    }

    /** What only JSON shows: the short formulas and the sum for the neutral point. */
    private void closer(Looked looked) {
        ClassicalModes c = looked.classical();
        Fields formulas = answer.results().section("short_formulas");
        formulas.put("speed_and_height_period_s", 2 * Math.PI / c.speedAndHeight(), 1);
        formulas.put("speed_and_height_stiff_period_s", c.stiffPeriod(), 1);
        formulas.put("nose_up_down_period_undamped_s", 2 * Math.PI / c.noseUpDown(), 2);
        formulas.put("nose_up_down_damping_ratio", c.noseUpDownDamping(), 2);
        formulas.put("nose_left_right_period_undamped_s", 2 * Math.PI / c.noseLeftRight(), 2);
        formulas.put("nose_left_right_damping_ratio", c.noseLeftRightDamping(), 2);
        formulas.put("roll_growth_per_second", c.rollGrowth(), 2);
        formulas.put("circle_growth_per_second", c.circleGrowth(), 3);
        TailBuildUp sum = looked.buildUp();
        Fields terms = answer.results().section("neutral_point_as_a_sum");
        terms.put("wing_pct", Unit.PERCENT.fromSi(sum.wing()), 1);
        terms.put("tailplane_pct", Unit.PERCENT.fromSi(sum.tail()), 1);
        terms.put("wing_height_pct", Unit.PERCENT.fromSi(sum.wingHeight()), 1);
        terms.put("pod_pct", Unit.PERCENT.fromSi(-sum.pod()), 1);
        terms.put("sum_pct", Unit.PERCENT.fromSi(sum.neutralPoint()), 1);
        terms.put("pressure_at_tail_ratio", sum.pressureRatio(), 3);
        terms.put("boom_leaves_ratio", sum.boomEffect(), 3);
        terms.put("downwash_slope", sum.downwashSlope(), 3);
    }

    private void derivatives(Looked looked) {
        answer.gap();
        answer.sayFlush("Slopes at this speed by both models, each in its own trimmed glide; axes along the glide,"
                + " angles in radians, rates as q c/2V, p b/2V, r b/2V:");
        Table table = new Table(2, 2).right("fast").right("strip").left();
        Fields fast = answer.results().section("derivatives_tail_volume_model");
        Fields strip = answer.results().section("derivatives_strip_model");
        for (Quantity<Derivatives> one : DerivativeQuantities.ALL) {
            fast.put(one.key() + "_words", one.words());
            table.row(fast.put(one, looked.fast()), strip.put(one, looked.strip()), one.words());
        }
        answer.table(table);
        answer.gap();
    }

    private void end(Modes modes) {
        Fields results = answer.results();
        answer.sayFlush("The neutral point is known to about "
                + results.put("neutral_point_known_to_mm", CheckAnswer.KNOWN_TO_MM, 0)
                + " mm; your own dive test knows it better.");
        Margins margins = result.margins();
        List<Mode> growing = modes.all().stream()
                .filter(mode -> !mode.dies() && mode.kind() != Mode.Kind.CIRCLE)
                .toList();
        double eaten = margins.margin() - margins.marginLaunch();
        String lost = results.put("boom_takes_mm", Unit.MILLIMETRE.fromSi(eaten), 1);
        if (BalanceQuantities.MARGIN.shown(margins) < 0) {
            answer.verdict(
                    "The CG is behind the neutral point: it will not hold its speed by itself. Move the CG forward"
                            + " before it is thrown.");
        } else if (Cautions.littleMargin(result)) {
            answer.verdict("At launch speed the boom's bending takes " + lost + " mm, and "
                    + (BalanceQuantities.LAUNCH_MARGIN.shown(margins) > 0 ? "little" : "no")
                    + " margin is left: it may tuck when thrown hard. CG forward, or a stiffer boom.");
        } else if (!growing.isEmpty()) {
            answer.verdict(
                    "It grows by itself: " + ModeWords.name(growing.get(0).kind()) + ". See above.");
        } else if (Cautions.smallFin(result)) {
            answer.verdict(
                    "Steady in pitch; the fin is smaller than such gliders have, so a hard or late release will swing"
                            + " far.");
        } else {
            answer.verdict(steady(modes) + " The boom's bending takes as much margin at launch as " + lost
                    + " mm of CG would"
                    + (Unit.MILLIMETRE.fromSi(eaten) > 3
                            ? ": for hard throws look at the boom before you move the CG."
                            : "."));
        }
    }

    /** How it stands, no better than the lines above say. */
    private String steady(Modes modes) {
        boolean tightens =
                modes.all().stream().anyMatch(mode -> mode.kind() == Mode.Kind.CIRCLE && ModeWords.tightens(mode));
        String steady = tightens ? "Steady in pitch and yaw; a circle is held by the stick." : "Steady in all axes.";
        List<String> unusual = new ArrayList<>();
        if (!Usual.STATIC_MARGIN.contains(ResultQuantities.STATIC_MARGIN.value(result))) {
            unusual.add("the margin");
        }
        if (!Usual.TAIL_VOLUME_H.contains(ResultQuantities.TAIL_VOLUME_H.value(result))) {
            unusual.add("the tailplane's volume");
        }
        if (!Usual.TAIL_VOLUME_V.contains(ResultQuantities.TAIL_VOLUME_V.value(result))) {
            unusual.add("the fin's volume");
        }
        return unusual.isEmpty()
                ? steady
                : steady + " Not where such gliders have it: " + String.join(", ", unusual) + ".";
    }
}
