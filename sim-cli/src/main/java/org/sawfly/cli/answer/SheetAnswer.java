package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.flight.Craft;
import org.sawfly.flight.Deflections;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomCut;
import org.sawfly.glider.BoomSleeve;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.Fin;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Part;
import org.sawfly.glider.Piece;
import org.sawfly.glider.TailClearance;
import org.sawfly.glider.Tailplane;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.strength.ControlLoads;
import org.sawfly.strength.HingeMoment;
import org.sawfly.study.BoomLook;
import org.sawfly.study.BoomQuantities;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Setting;

/**
 * A sheet for the bench: what to note before, what to do in which order, what to set afterwards. Places are measured only
 * from edges that are there when they are needed.
 */
public final class SheetAnswer {
    /** How often spring and string hold what the air asks of them [1]; common practice, no source. */
    private static final double HELD_TIMES = 2;
    /** Arm of the horn where nothing else is said [m]; common practice, no source. */
    private static final double HORN = Unit.MILLIMETRE.toSi(8);
    /** What a string may give under its pull [m]. */
    private static final double STRETCH = Unit.MILLIMETRE.toSi(0.5);

    private static final double SQUARE_DEG = 0.5;
    private static final double ALONG_DEG = 0.3;
    private static final double DECALAGE_DEG = 0.1;
    private static final double LEAST_GAP_MM = 3;
    /** Width of the headings. */
    private static final int COLUMN = 13;
    /** A weak spring has this part of what it should have [1]. */
    private static final double WEAK_SPRING = 0.25;

    private final Answer answer = new Answer("compare");
    private final Result today;
    private final Version version;
    private final Result result;
    private final Glider before;
    private final Glider after;
    private final Fields sheet;
    private int step;

    /**
     * Hinge moments.
     *
     * @param release as the hand opens
     * @param fastest in the fastest steady glide
     */
    public record Controls(ControlLoads release, ControlLoads fastest) {}

    private SheetAnswer(Result today, Version version) {
        this.today = today;
        this.version = version;
        this.result = version.answered().result();
        this.before = today.plan().craft().glider();
        this.after = result.plan().craft().glider();
        this.sheet = answer.results().section("sheet");
    }

    /** The sheet of one version, which has a result. */
    public static Answer of(Result today, Version version, BoomLook boomToday, Controls controls) {
        SheetAnswer made = new SheetAnswer(today, version);
        made.before(boomToday);
        made.saw();
        made.square();
        made.glue();
        made.balance();
        made.controls(controls);
        made.end();
        return made.answer;
    }

    private void before(BoomLook boom) {
        answer.inputs().put("glider", before.name());
        answer.inputs()
                .put(
                        "changes",
                        version.changes().stream().map(Setting::toString).toList());
        sheet.section("today").putAll(ResultQuantities.ALL, today);
        sheet.section("version").putAll(ResultQuantities.ALL, result);
        answer.sayFlush(
                "BENCH SHEET  " + before.name() + ", " + ChangeWords.of(version.changes()) + "   date ________");
        hanging(
                "Before",
                "mass ______ (" + ResultQuantities.MASS.text(today) + ")  CG ______ ("
                        + ResultQuantities.CG.text(today) + ")  elevator in cruise ______ ("
                        + Case.upDown(sheet.section("before"), "cruise_elevator_up_mm", today.cruiseElevatorUp(), 1)
                        + "), preset ______, throws up/down ______ left/right ______, string lengths: elevator ______ rudder"
                        + " ______. 500 g at the tail moves ______ mm ("
                        + sheet.section("today").put(BoomQuantities.MOVES_HEAVY, boom) + "); first swing ______ deg ("
                        + ResultQuantities.FIRST_SWING.text(today) + ").");
    }

    private void step(String name, String words) {
        step++;
        sheet.item("steps").put("number", step);
        hanging(step + (step < 10 ? "  " : " ") + name, words);
    }

    /** A heading with words beside it, in a column of their own. */
    private void hanging(String heading, String words) {
        List<String> lines = new ArrayList<>(new Block.Paragraph(" ".repeat(COLUMN) + words, 0).lines());
        lines.set(0, heading + lines.get(0).substring(heading.length()));
        answer.lines(lines.toArray(String[]::new));
    }

    private double behindTrailingEdge(double x) {
        return Unit.MILLIMETRE.fromSi(-x - before.wing().planform().chordAt(0));
    }

    private void saw() {
        Boom old = before.boom();
        Boom now = after.boom();
        List<BoomSleeve> added = new ArrayList<>();
        now.build().sleeves().forEach((name, sleeve) -> {
            if (!old.build().sleeves().containsKey(name)) {
                added.add(sleeve);
            }
        });
        boolean rear = version.cuts() && now.endDiameter() != old.endDiameter();
        if (rear) {
            rearEnd(old, now);
        }
        for (BoomSleeve sleeve : added) {
            sleeve(sleeve, Unit.MILLIMETRE.fromSi(now.endX() - old.endX()));
        }
        if (rear) {
            double left = Unit.MILLIMETRE.fromSi(now.endX());
            Fin fin = after.fin();
            Tailplane tail = after.tailplane();
            step(
                    "Dry fit",
                    "from the NEW end of the boom forward: fin root leading edge "
                            + sheet.put("fin_from_end_mm", Unit.MILLIMETRE.fromSi(fin.x()) - left, 0)
                            + " mm, tailplane root leading edge "
                            + sheet.put("tailplane_from_end_mm", Unit.MILLIMETRE.fromSi(tail.x()) - left, 0)
                            + " mm (check: "
                            + sheet.put("tailplane_from_wing_mm", behindTrailingEdge(tail.x()), 0)
                            + " mm behind the wing's trailing edge). " + gap());
        } else if (after.fin().x() != before.fin().x()) {
            step(
                    "Check",
                    "once joined the fin's root leading edge is "
                            + sheet.put(
                                    "fin_from_wing_mm",
                                    behindTrailingEdge(after.fin().x()),
                                    0)
                            + " mm behind the wing's trailing edge, the tailplane's "
                            + sheet.put(
                                    "tailplane_from_wing_mm",
                                    behindTrailingEdge(after.tailplane().x()),
                                    0) + " mm.");
        }
    }

    private String gap() {
        double gap =
                Unit.MILLIMETRE.fromSi(TailClearance.gap(after.tailplane(), after.fin(), TailClearance.FULL_THROW));
        String least = sheet.put("least_gap_mm", LEAST_GAP_MM, 0);
        return Double.isInfinite(gap)
                ? "Both move clear of each other."
                : "Both at full throw: gap " + least + " mm at least, " + sheet.put("gap_mm", gap, 0) + " expected.";
    }

    private void rearEnd(Boom old, Boom now) {
        double length = now.endX() - old.endX();
        String off = sheet.put("cut_mm", Unit.MILLIMETRE.fromSi(length), 1);
        step(
                "Mark",
                off + " mm from the boom's end = "
                        + sheet.put("mark_from_wing_mm", behindTrailingEdge(now.endX()), 0)
                        + " mm behind the wing's trailing edge at the root. Tape round, line on the tape, look from both"
                        + " sides. Measure again.");
        step("Cut", "wet or with extraction. Turn the boom, cut round, not through. Padded block, no bare jaws.");
        double offcut = BoomCut.atRearEnd(length, 0).offcut(before).mass();
        step(
                "Weigh",
                "the offcut: ______ g ("
                        + sheet.put("offcut_g", Grams.shown(today, result, Piece.BOOM, Unit.GRAM.fromSi(offcut)), 1)
                        + "). Diameter of the face: ______ mm ("
                        + sheet.put("face_mm", Unit.MILLIMETRE.fromSi(now.endDiameter()), 1) + ").");
    }

    private void sleeve(BoomSleeve sleeve, double out) {
        Fields fields = sheet.item("sleeves");
        String front = fields.put("from_wing_mm", behindTrailingEdge(sleeve.frontX()), 0);
        String length = fields.put("length_mm", Unit.MILLIMETRE.fromSi(sleeve.length()), 0);
        String wall = fields.put("wall_mm", Unit.MILLIMETRE.fromSi(sleeve.wall()), 2);
        String inside = fields.put(
                "boom_inside_mm",
                Unit.MILLIMETRE.fromSi(
                        BoomTube.of(after.boom()).section(sleeve.frontX()).inner()),
                1);
        String from = front + " mm behind the wing's trailing edge at the root";
        if (Double.isNaN(sleeve.cutX())) {
            step("Roughen", "and clean from " + from + ", " + length + " mm long.");
            step("Wrap", length + " mm long, " + wall + " mm thick when cured, ends feathered. Let it cure.");
            return;
        }
        String cut = fields.put("cut_from_wing_mm", behindTrailingEdge(sleeve.cutX()), 0);
        String goes = out > 0 ? ", second cut " + fields.put("taken_out_mm", out, 1) + " mm further back" : "";
        step(
                "Mark",
                "cut " + cut + " mm behind the wing's trailing edge at the root" + goes
                        + ". Tape round, measure again.");
        step("Cut", "wet or with extraction. Turn the boom, cut round, not through. Padded block, no bare jaws.");
        step(
                "Sleeve",
                (sleeve.fit() == BoomSleeve.Fit.INSIDE ? "a plug for " + inside + " mm inside, " : "a sleeve outside, ")
                        + length + " mm long, wall " + wall
                        + " mm, half of it in each end. Dry fit, sight along the boom,"
                        + " glue, let it cure.");
    }

    private void square() {
        String deg = sheet.put("square_deg", SQUARE_DEG, 1);
        String along = sheet.put("along_deg", ALONG_DEG, 1);
        Tailplane tail = after.tailplane();
        Fin fin = after.fin();
        double chord = tail.planform().chordAt(0);
        String shim =
                sheet.put("incidence_shim_mm", Unit.MILLIMETRE.fromSi(chord * Math.sin(Math.abs(tail.decalage()))), 1);
        step(
                "Square",
                "fin " + deg + " deg = "
                        + sheet.put("fin_square_mm", arc(SQUARE_DEG, fin.above().span()), 1)
                        + " mm at its top; along the boom " + along + " deg = "
                        + sheet.put("fin_along_mm", arc(ALONG_DEG, fin.above().chordAt(0)), 1)
                        + " mm over the chord; tailplane level " + deg + " deg = "
                        + sheet.put(
                                "tailplane_level_mm",
                                arc(SQUARE_DEG, tail.planform().span()),
                                1)
                        + " mm at its tip; decalage " + sheet.put("decalage_step_deg", DECALAGE_DEG, 1) + " deg = "
                        + sheet.put("decalage_step_mm", arc(DECALAGE_DEG, chord), 2)
                        + " mm over the tailplane's chord.");
        step(
                "Shim",
                "wing root chord line level: the tailplane's " + (tail.decalage() >= 0 ? "trailing" : "leading")
                        + " edge stands " + shim + " mm higher than its other edge ("
                        + sheet.put("decalage_deg", Unit.DEGREE.fromSi(Math.abs(tail.decalage())), 1) + " deg over "
                        + sheet.put("tailplane_chord_mm", Unit.MILLIMETRE.fromSi(chord), 0) + " mm).");
    }

    private static double arc(double degrees, double length) {
        return Unit.MILLIMETRE.fromSi(length * Unit.DEGREE.toSi(degrees));
    }

    private void glue() {
        Part joint = after.parts().get(CompareAnswer.JOINT);
        if (joint != null) {
            step(
                    "Glue",
                    "no more than "
                            + sheet.put(
                                    "glue_g",
                                    Grams.shown(today, result, CompareAnswer.JOINT, Unit.GRAM.fromSi(joint.mass())),
                                    1)
                            + " g in all. Look along it again before it sets. Cloth. Let it cure.");
        }
    }

    private void balance() {
        double shorter = Unit.MILLIMETRE.fromSi(after.fin().x() - before.fin().x());
        if (Numbers.rounded(shorter, 0) != 0) {
            step(
                    "Strings",
                    sheet.put("strings_shorter_mm", shorter, 0) + " mm shorter. Holes off the side faces, small, edges"
                            + " rounded.");
        }
        Quantity<Result> lead = ResultQuantities.NOSE_LEAD;
        Difference change = sheet.section("changes").difference(lead.key(), Difference.of(lead, today, result));
        double back = -ResultQuantities.BATTERY_FORWARD.shown(result);
        Difference slid = new Difference(0, back, Unit.MILLIMETRE, 1);
        step(
                "Balance",
                "CG " + ResultQuantities.CG.text(result) + " mm behind the root leading edge; "
                        + (slid.same() ? "" : "battery: " + slid.words(Direction.PLACE) + "; ") + "lead: "
                        + change.words(Direction.LEAD) + ". Mass then " + ResultQuantities.MASS.text(result) + " g: "
                        + Grams.words(Grams.of(today, result), version.cuts(), sheet) + ".");
        Craft craft = result.plan().craft();
        double cruise = result.cruiseElevatorUp();
        double preset = -Deflections.deflection(
                result.plan().presetElevator(), craft.deflections().elevatorChord());
        step(
                "Radio",
                "at the root trailing edge, from level: elevator in cruise "
                        + upDown(sheet.section("after"), "cruise_elevator_up_mm", cruise, 1) + ", launch preset "
                        + upDown(sheet.section("after"), "preset_elevator_up_mm", preset, 1) + ". Throws: elevator "
                        + more(
                                "elevator_throw_change_pct",
                                today.feel().elevatorPower(),
                                result.feel().elevatorPower())
                        + ", rudder "
                        + more(
                                "rudder_throw_change_pct",
                                today.feel().rudderPower(),
                                result.feel().rudderPower())
                        + ". Directions, range with the hatch closed.");
    }

    private static String upDown(Fields fields, String key, double up, int decimals) {
        return Case.upDown(fields, key, up, decimals).replace(" ", " mm ");
    }

    private String more(String key, double before, double after) {
        double percent = Numbers.rounded(Unit.PERCENT.fromSi(before / after - 1), 0);
        sheet.put(key, percent, 0);
        return percent == 0
                ? "as before"
                : Numbers.fixed(Math.abs(percent), 0) + " % " + (percent > 0 ? "more" : "less");
    }

    private void controls(Controls controls) {
        ControlLoads release = controls.release();
        ControlLoads fastest = controls.fastest();
        String times = sheet.put("held_times", HELD_TIMES, 0);
        double worst = Math.max(Math.abs(release.elevator()), Math.abs(fastest.elevator()));
        double rudder = Math.max(Math.abs(release.rudder()), Math.abs(fastest.rudder()));
        double spring = HingeMoment.springTorque(worst, HELD_TIMES);
        double side = HingeMoment.springTorque(rudder, HELD_TIMES);
        step(
                "Springs",
                "the air turns the elevator with " + torque("elevator_at_release_Nmm", release.elevator())
                        + " at release ("
                        + sheet.put("release_speed_mps", release.speed(), 0) + " m/s) and "
                        + torque("elevator_gliding_Nmm", fastest.elevator()) + " in a glide at "
                        + sheet.put("fastest_glide_mps", fastest.speed(), 0) + " m/s, the rudder with "
                        + torque("rudder_at_release_Nmm", release.rudder()) + " at release. Held " + times
                        + " times: spring "
                        + torque("elevator_spring_Nmm", spring) + " and string "
                        + pull("elevator_string_N", HingeMoment.stringPull(spring, worst, HORN)) + " on the elevator, "
                        + torque("rudder_spring_Nmm", side) + " and "
                        + pull("rudder_string_N", HingeMoment.stringPull(side, rudder, HORN))
                        + " on the rudder, on a horn of "
                        + sheet.put("horn_mm", Unit.MILLIMETRE.fromSi(HORN), 0) + " mm.");
        follows(release, worst, spring);
    }

    private void follows(ControlLoads release, double worst, double spring) {
        double weak = WEAK_SPRING * spring;
        double from = HingeMoment.followsFrom(weak, release.elevator(), release.speed());
        if (weak > 0 && Double.isFinite(from)) {
            hanging(
                    "",
                    "A spring of only " + torque("weak_spring_Nmm", weak) + " lets the elevator follow the air from "
                            + sheet.put("follows_from_mps", from, 0) + " m/s on.");
        }
        double density = result.plan().launch().weather().ground().density();
        double viscosity = result.plan().launch().weather().ground().kinematicViscosity();
        double pressure = 0.5 * density * release.speed() * release.speed();
        HingeMoment hinge = HingeMoment.ofElevator(after);
        double rate = HingeMoment.stringPull(spring, worst, HORN) * HORN * HORN / STRETCH;
        if (rate > 0) {
            double left = hinge.left(pressure, rate, release.speed() * hinge.chord() / viscosity);
            hanging(
                    "",
                    "A string that gives " + sheet.put("string_gives_mm", Unit.MILLIMETRE.fromSi(STRETCH), 1)
                            + " mm under that pull leaves "
                            + sheet.put("left_of_elevator_pct", Unit.PERCENT.fromSi(left), 0)
                            + " % of the elevator at release.");
        }
    }

    private String torque(String key, double moment) {
        String text = sheet.put(key, Unit.NEWTON_MILLIMETRE.fromSi(Math.abs(moment)), 1);
        return text + " N mm";
    }

    private String pull(String key, double force) {
        return sheet.put(key, force, 1) + " N";
    }

    private void end() {
        step("First air", "gentle hand toss, half a throw, three quarters; watch the swing.");
        Cautions.onTheBench(version.changes()).forEach(answer::caution);
        answer.caution(Cautions.FIRST_FLIGHTS);
        Cautions.of(result).forEach(answer::caution);
        answer.verdict("Read it aloud with the part in your hand before you cut or glue. All of it is an estimate.");
    }
}
