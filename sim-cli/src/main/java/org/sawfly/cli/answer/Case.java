package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.aero.ModelChoice;
import org.sawfly.air.Air;
import org.sawfly.flight.Scenario;
import org.sawfly.flight.Steering;
import org.sawfly.flight.Weather;
import org.sawfly.glider.Hand;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Unit;
import org.sawfly.study.Result;
import org.sawfly.study.Setting;

/**
 * One glider, thrown by one thrower, and what came of it: what the answers about a single glider start from.
 *
 * @param changes against the files; empty for the glider as it is
 * @param scenario what was asked
 * @param result what came of it
 */
public record Case(List<Setting> changes, Scenario scenario, Result result) {
    /** Takes a copy. */
    public Case {
        changes = List.copyOf(changes);
    }

    /** The glider and what is changed of it. */
    String title() {
        String name = scenario.glider().name();
        return changes.isEmpty() ? name : name + ", " + ChangeWords.of(changes);
    }

    /** Still air on the field. */
    public Air air() {
        return scenario.launch().weather().ground();
    }

    /** Says what was asked. */
    void inputs(Fields inputs) {
        inputs.put("glider", scenario.glider().name());
        inputs.put("launch", scenario.launch().name());
        inputs.put("changes", changes.stream().map(Setting::toString).toList());
        inputs.put("axes", axes(scenario));
        inputs.put("preset_rule", ChangeWords.rules(scenario));
        inputs.put("model", model(scenario.flying().model()));
        inputs.put("hands_off", handsOff(scenario.flying().steering()));
        weather(inputs);
    }

    private static String axes(Scenario scenario) {
        return switch (scenario.axes()) {
            case PITCH -> "pitch";
            case PITCH_YAW -> "pitch-yaw";
            case ALL -> "all";
        };
    }

    /** A model as it is chosen: "strip". */
    static String model(ModelChoice model) {
        return switch (model) {
            case TAIL_VOLUME -> "tail-volume";
            case STRIP -> "strip";
        };
    }

    /** A model as it is spoken of: "fast model". */
    static String modelWords(ModelChoice model) {
        return switch (model) {
            case TAIL_VOLUME -> "fast model";
            case STRIP -> "strip model";
        };
    }

    /** The controls that the pilot leaves alone. */
    static List<String> handsOff(Steering steering) {
        List<String> off = new ArrayList<>();
        if (!steering.elevator()) {
            off.add("elevator");
        }
        if (!steering.rudder()) {
            off.add("rudder");
        }
        if (!steering.aileron()) {
            off.add("aileron");
        }
        return off;
    }

    /** "calm, 15 C, sea level". */
    String weather(Fields inputs) {
        Weather weather = scenario.launch().weather();
        String wind = inputs.put("wind_mps", weather.wind(), 0);
        String temperature = inputs.put("temperature_c", Unit.CELSIUS.fromSi(weather.temperature()), 0);
        String height = inputs.put("field_above_sea_m", weather.fieldHeight(), 0);
        return (wind.equals("0") ? "calm" : wind + " m/s against the throw") + ", " + temperature + " C, "
                + (height.equals("0") ? "sea level" : height + " m above the sea");
    }

    /** "right" or "left". */
    String hand() {
        return scenario.launch().thrower().hand() == Hand.RIGHT ? "right" : "left";
    }

    /** A deflection with its direction in words: "0.8 up", "level"; the number goes in up positive. */
    static String upDown(Fields fields, String key, double upMetres, int decimals) {
        double shown = Numbers.rounded(Unit.MILLIMETRE.fromSi(upMetres), decimals);
        fields.put(key, Unit.MILLIMETRE.fromSi(upMetres), decimals);
        if (Double.isNaN(shown)) {
            return Numbers.NONE;
        }
        return shown == 0 ? "level" : Numbers.fixed(Math.abs(shown), decimals) + (shown > 0 ? " up" : " down");
    }

    /** A place behind the leading edge without a sign: "73.8", "205.0 ahead"; the number goes in behind positive. */
    static String place(Fields fields, String key, double behindMetres) {
        double behind = Unit.MILLIMETRE.fromSi(behindMetres);
        String text = fields.put(key, behind, 1);
        return behind < 0 ? Numbers.fixed(-behind, 1) + " ahead" : text;
    }
}
