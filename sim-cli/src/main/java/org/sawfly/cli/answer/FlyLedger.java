package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.sawfly.aero.Loss;
import org.sawfly.air.Standard;
import org.sawfly.flight.EnergyLedger;
import org.sawfly.flight.OutcomeQuantities;
import org.sawfly.motion.Axes;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Relief;

/** Where the throw's energy went, as metres of height that add up as printed; beside each what less of it gives. */
final class FlyLedger {
    private final Answer answer;
    private final Case asked;
    private final EnergyLedger ledger;
    private final double weight;
    private final List<Line> lines = new ArrayList<>();

    /** A line: words, metres, what less of it gives (null for nothing to say). */
    private record Line(String key, String words, double metres, Relief.Of relief) {}

    FlyLedger(Answer answer, Case asked) {
        this.answer = answer;
        this.asked = asked;
        this.ledger = asked.result().outcome().ledger();
        this.weight = asked.result().plan().craft().mass().mass() * Standard.GRAVITY;
    }

    void write(Map<Relief.Of, Double> gains) {
        energies();
        boolean wags = asked.scenario().axes() != Axes.PITCH;
        Map<Loss, Double> view = wags ? ledger.straight() : ledger.spent();
        add("wing", "wing, skin and shape", view.get(Loss.WING_PROFILE), Relief.Of.WING_PROFILE);
        add("pod_and_boom", "pod and boom", view.get(Loss.BODIES), Relief.Of.BODIES);
        double tails = view.get(Loss.TAILPLANE_PROFILE) + view.get(Loss.FIN_PROFILE);
        add("tails", "tailplane and fin", tails, Relief.Of.TAIL_PROFILE);
        add("lift", "lift", view.get(Loss.LIFT), Relief.Of.INDUCED);
        if (wags) {
            double exchange = ledger.straight().get(Loss.EXCHANGE);
            add("wag", "tail wag", ledger.wag() + ledger.rollHold() + exchange, Relief.Of.WAG);
        }
        add("speed_left", "speed left at the top", ledger.speedLeft(), null);
        if (Math.abs(ledger.wind()) > 1e-9) {
            add("wind", ledger.wind() > 0 ? "the wind took" : "the wind gave", ledger.wind(), null);
        }
        table(gains);
    }

    private void add(String key, String words, double energy, Relief.Of relief) {
        lines.add(new Line(key, words, energy / weight, relief));
    }

    private void energies() {
        Fields fields = answer.results().section("energy_ledger");
        fields.put("start_J", ledger.start(), 1);
        fields.put("height_won_J", ledger.heightWon(), 1);
        fields.put("speed_left_J", ledger.speedLeft(), 1);
        for (Loss loss : Loss.values()) {
            String key = key(loss);
            fields.section("spent").put(key, ledger.spent().get(loss), 2);
            if (!ledger.straight().isEmpty()) {
                fields.section("straight").put(key, ledger.straight().get(loss), 2);
            }
        }
        fields.put("wag_and_roll_J", ledger.wag(), 2);
        fields.put("roll_hold_J", ledger.rollHold(), 2);
        fields.put("wind_J", ledger.wind(), 2);
        fields.put("closure_pct", Unit.PERCENT.fromSi(ledger.closure()), 4);
    }

    private static String key(Loss loss) {
        return switch (loss) {
            case LIFT -> "lift_J";
            case WING_PROFILE -> "wing_J";
            case TAILPLANE_PROFILE -> "tailplane_J";
            case FIN_PROFILE -> "fin_J";
            case BODIES -> "bodies_J";
            case EXCHANGE -> "exchange_J";
        };
    }

    private void table(Map<Relief.Of, Double> gains) {
        Fields fields = answer.results().section("where_the_height_went");
        String start = fields.put("start_m", ledger.start() / weight, 1);
        double hand = asked.scenario().launch().releaseHeight();
        double top = OutcomeQuantities.APEX_HEIGHT.shown(asked.result().outcome());
        double won = Numbers.rounded(top - Numbers.rounded(hand, 1), 1);
        double[] metres = lines.stream().mapToDouble(Line::metres).toArray();
        double[] shown = AddingUp.rounded(metres, Numbers.rounded(ledger.start() / weight, 1) - won, 1);
        Table table = new Table(2, 4)
                .left("Where the throw's " + start + " m went")
                .right("spent")
                .left("10 % less of it gives");
        table.row("  height won", fields.put("height_won_m", won, 1) + " m");
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            fields.put(line.key() + "_m", shown[i], 1);
            table.row("  " + line.words(), Numbers.fixed(Math.abs(shown[i]), 1) + " m", gain(fields, line, gains));
        }
        answer.table(table);
    }

    private static String gain(Fields fields, Line line, Map<Relief.Of, Double> gains) {
        Double gain = line.relief() == null ? null : gains.get(line.relief());
        if (gain == null || Double.isNaN(gain)) {
            return "";
        }
        String metres = fields.put(line.key() + "_less_gives_m", gain, 1);
        String words = gain < 0 ? Numbers.fixed(-gain, 1) + " m lower" : metres + " m";
        return line.relief() == Relief.Of.WAG ? "all of it gone gives " + words : words;
    }
}
