package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.air.Standard;
import org.sawfly.flight.Craft;
import org.sawfly.glider.Balance;
import org.sawfly.glider.Correction;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Part;
import org.sawfly.glider.Piece;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.CgChoice;
import org.sawfly.study.ResultQuantities;

/** The glider on the balance, part by part: what a gram costs where, and the lead for another CG. */
public final class BalanceAnswer {
    private static final double SLIDE = 0.010;
    private static final double GRAM = 0.001;
    private static final int ROLL = 3;
    private static final String BATTERY = "battery";

    private final Answer answer = new Answer("balance");
    private final Case asked;
    private final Glider glider;
    private final Balance balance;

    /**
     * What stood on the scale and on the balance.
     *
     * @param mass [kg], NaN when not weighed
     * @param cgX forward positive [m], NaN when not balanced
     */
    public record Weighed(double mass, double cgX) {}

    private BalanceAnswer(Case asked) {
        this.asked = asked;
        this.glider = asked.result().rebalanced().glider();
        this.balance = Balance.of(glider);
    }

    /**
     * The whole answer.
     *
     * @param asked the glider and its throw
     * @param weighed what was weighed; shown beside the sum when nothing is changed
     * @param choices CGs one could have
     */
    public static Answer of(Case asked, Weighed weighed, List<CgChoice> choices) {
        BalanceAnswer made = new BalanceAnswer(asked);
        asked.inputs(made.answer.inputs());
        made.parts(weighed);
        made.answer.gap();
        made.choices(choices);
        made.battery();
        made.inertia();
        made.end();
        return made.answer;
    }

    private void parts(Weighed weighed) {
        boolean asItIs = asked.changes().isEmpty();
        if (!asItIs) {
            answer.sayFlush(asked.title());
        }
        Table table = new Table(0, 2)
                .left(asItIs ? asked.title() + ", part by part" : "part by part")
                .right("grams")
                .right("behind LE")
                .left("1 g here costs");
        List<Balance.Row> shown = balance.rows();
        Correction correction = glider.correction();
        boolean corrected = Math.abs(correction.mass()) >= 0.05 * GRAM;
        double[] grams = new double[shown.size() + (corrected ? 1 : 0)];
        for (int i = 0; i < shown.size(); i++) {
            grams[i] = Unit.GRAM.fromSi(shown.get(i).mass());
        }
        if (corrected) {
            grams[shown.size()] = Unit.GRAM.fromSi(correction.mass());
        }
        Fields results = answer.results();
        double total = Numbers.rounded(Unit.GRAM.fromSi(balance.total().mass()), 1);
        double[] printed = AddingUp.rounded(grams, total, 1);
        for (int i = 0; i < shown.size(); i++) {
            Balance.Row row = shown.get(i);
            Fields fields = results.item("parts");
            fields.put("part", row.name());
            fields.put("mass_g", grams[i], 1);
            table.row(
                    "  " + words(row.name()),
                    shown(fields, grams[i], printed[i]),
                    Case.place(fields, "behind_mm", -row.x()),
                    lead(fields, row.leadPerMass(), i == 0));
        }
        if (corrected) {
            Fields fields = results.section("weighing_added");
            fields.put("mass_g", grams[shown.size()], 1);
            table.row("  what weighing showed beyond that", shown(fields, grams[shown.size()], printed[shown.size()]));
        }
        table.ruler();
        table.row(
                "  adds up to",
                results.put(ResultQuantities.MASS, asked.result()),
                results.put(ResultQuantities.CG, asked.result()));
        if (asItIs) {
            weighed(table, weighed);
        }
        answer.table(table);
    }

    private static String shown(Fields fields, double exact, double printed) {
        if (Numbers.rounded(exact, 1) != printed) {
            fields.put("mass_shown_g", printed, 1);
        }
        return Numbers.fixed(printed, 1);
    }

    private void weighed(Table table, Weighed weighed) {
        Fields fields = answer.results().section("weighed");
        String mass = fields.put("mass_g", Unit.GRAM.fromSi(weighed.mass()), 1);
        String cg = fields.put("cg_mm", Unit.MILLIMETRE.fromSi(-weighed.cgX()), 1);
        if (Double.isNaN(weighed.mass()) && Double.isNaN(weighed.cgX())) {
            table.row("  you weighed", mass, cg, "not yet");
            return;
        }
        boolean heavy = !Double.isNaN(weighed.mass()) && !mass.equals(ResultQuantities.MASS.text(asked.result()));
        boolean off = !Double.isNaN(weighed.cgX()) && !cg.equals(ResultQuantities.CG.text(asked.result()));
        table.row("  you weighed", mass, cg, heavy || off ? "differs: weigh again" : "agrees");
    }

    private static String words(String piece) {
        return switch (piece) {
            case Piece.WING -> "wing with peg";
            case Piece.FIN -> "fin and rudder";
            case Piece.POD -> "pod and hatch";
            default -> piece;
        };
    }

    private static String lead(Fields fields, double leadPerMass, boolean first) {
        String number = fields.put("lead_per_gram", leadPerMass, 1);
        if (Numbers.rounded(leadPerMass, 1) < 0) {
            return "saves " + Numbers.fixed(-leadPerMass, 1);
        }
        return "      " + number + (first ? " g of lead" : "");
    }

    private void choices(List<CgChoice> choices) {
        Table table = new Table(2, 2).left("CG wanted");
        List<String> lead = new ArrayList<>(List.of("lead"));
        List<String> margin = new ArrayList<>(List.of("margin"));
        for (CgChoice choice : choices) {
            Fields fields = answer.results().item("cg_choices");
            table.right(fields.put("cg_mm", Unit.MILLIMETRE.fromSi(choice.cg()), 0));
            lead.add(fields.put("nose_lead_g", Unit.GRAM.fromSi(choice.lead()), 1));
            margin.add(fields.put("static_margin_pct", Unit.PERCENT.fromSi(choice.marginShare()), 1));
        }
        table.left("mm");
        lead.add("g");
        margin.add("%");
        answer.table(table.row(lead).row(margin));
    }

    private void battery() {
        Part battery = glider.parts().get(BATTERY);
        if (battery == null) {
            return;
        }
        Fields fields = answer.results().section(BATTERY);
        String slide = fields.put("moved_forward_mm", Unit.MILLIMETRE.fromSi(SLIDE), 0);
        String cg = fields.put("cg_forward_mm", Unit.MILLIMETRE.fromSi(SLIDE * balance.cgPerSlide(battery)), 1);
        String lead = fields.put("lead_saved_g", Unit.GRAM.fromSi(SLIDE * balance.leadSavedPerSlide(battery)), 1);
        String room = fields.put("room_forward_mm", Unit.MILLIMETRE.fromSi(battery.slideForward()), 0);
        String back = fields.put("room_back_mm", Unit.MILLIMETRE.fromSi(battery.slideBack()), 0);
        boolean any = battery.slideForward() + battery.slideBack() > 0;
        answer.say("  Or the battery: " + slide + " mm forward = CG " + cg + " mm forward = " + lead
                + " g of lead saved." + (any ? " It has " + room + " mm of room forward, " + back + " back." : ""));
    }

    private void inertia() {
        Fields results = answer.results();
        Craft craft = asked.result().plan().craft();
        double density = asked.air().density() / Standard.DENSITY;
        double carried = density * craft.model().apparentMass()[ROLL][ROLL];
        answer.say("  Inertia, kg m2: roll " + results.put(ResultQuantities.IXX, asked.result()) + " (+"
                + results.put("ixx_carried_air_kgm2", carried, 4) + " carried air), pitch "
                + results.put(ResultQuantities.IYY, asked.result()) + ", yaw "
                + results.put(ResultQuantities.IZZ, asked.result()));
    }

    private void end() {
        Fields results = answer.results();
        results.put(ResultQuantities.NOSE_LEAD, asked.result());
        results.putAll(ResultQuantities.ALL, asked.result());
        answer.caution(Cautions.LEAD);
        Cautions.of(asked.result()).forEach(answer::caution);
        double x = balance.total().cg().x();
        double perMillimetre = balance.leadFor(x + GRAM) - glider.noseLead().mass();
        double tail = balance.leadPerMass(fin().x());
        answer.verdict("1 mm of CG is " + results.put("lead_per_mm_g", Unit.GRAM.fromSi(perMillimetre), 1)
                + " g of lead. One gram saved at the fin lets " + results.put("lead_per_fin_gram", tail, 1)
                + " g of lead out.");
        answer.verdict(Cautions.lastWords(asked.result()));
    }

    private Balance.Row fin() {
        return balance.rows().stream()
                .filter(row -> row.name().equals(Piece.FIN))
                .findFirst()
                .orElseThrow();
    }
}
