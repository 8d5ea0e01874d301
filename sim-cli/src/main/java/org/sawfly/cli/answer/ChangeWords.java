package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.flight.PresetRule;
import org.sawfly.flight.PushRule;
import org.sawfly.flight.Scenario;
import org.sawfly.glider.CgSetting.Means;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.study.Setting;

/** Changes and rules in a builder's words. */
public final class ChangeWords {
    /** The key of the cut. */
    public static final String CUT = "boom.cut_mm";

    private ChangeWords() {}

    /** What is changed: "40 mm off the rear end of the boom". */
    public static String of(List<Setting> changes) {
        List<String> words = new ArrayList<>();
        String end = "the rear end of the boom";
        for (Setting setting : changes) {
            if (setting.path().equals("cut.at")) {
                end = "the " + setting.value().replace('_', ' ') + " of the boom";
            }
        }
        for (Setting setting : changes) {
            if (!setting.path().startsWith("cut.") && !setting.path().startsWith("rebalance")) {
                words.add(one(setting, end));
            }
        }
        return words.isEmpty() ? "nothing changed" : String.join(", ", words);
    }

    private static String one(Setting setting, String end) {
        return switch (setting.path()) {
            case CUT -> setting.value() + " mm off " + end;
            case "boom.splice.behind_mm" -> "the boom sawn through " + setting.value() + " mm behind the leading edge";
            case "boom.splice.takes_out_mm" -> setting.value() + " mm of it taken out";
            case "boom.wrap.behind_mm" -> "the boom wrapped " + setting.value() + " mm behind the leading edge";
            case "tailplane.scale_area" -> "the tailplane's area times " + setting.value();
            case "fin.scale_area" -> "the fin's area times " + setting.value();
            case "ready_to_fly.cg_mm" -> "the CG at " + setting.value() + " mm";
            default -> setting.path() + " " + setting.value();
        };
    }

    /** A short name for the column: "cut 40". */
    public static String label(List<Setting> changes) {
        List<Setting> own = changes.stream()
                .filter(setting -> !setting.path().startsWith("cut."))
                .toList();
        for (String mended : List.of("splice", "wrap")) {
            if (!own.isEmpty() && own.stream().allMatch(one -> one.path().startsWith("boom." + mended))) {
                return mended;
            }
        }
        if (own.size() != 1) {
            return "changed";
        }
        Setting only = own.get(0);
        return switch (only.path()) {
            case CUT -> "cut " + only.value();
            case "tailplane.scale_area" -> "tail x " + only.value();
            case "fin.scale_area" -> "fin x " + only.value();
            case "ready_to_fly.cg_mm" -> "CG " + only.value();
            default -> "changed";
        };
    }

    /** What is kept and with what: "Keeps the margin: battery, then lead." */
    public static String keeps(RebalanceRule rule) {
        String what =
                switch (rule.keep()) {
                    case NOTHING -> "Nothing is rebalanced.";
                    case CG -> "Keeps the CG";
                    case MARGIN -> "Keeps the margin";
                    case CG_AT -> "Brings the CG to its place";
                };
        return rule.keep() == RebalanceRule.Keep.NOTHING ? what : what + ": " + movers(rule.with()) + ".";
    }

    private static String movers(List<Means> with) {
        if (with.equals(List.of(Means.NOSE_LEAD))) {
            return "lead only";
        }
        if (with.equals(List.of(Means.BATTERY))) {
            return "battery only";
        }
        return with.get(0) == Means.BATTERY ? "battery, then lead" : "lead, then battery";
    }

    /** What the launch preset is counted from. */
    public static String rules(Scenario scenario) {
        String push = scenario.flying().push() == PushRule.BEST ? ", pushed over at the best moment for each" : "";
        return presetFrom(scenario.presetRule()) + push;
    }

    private static String presetFrom(PresetRule rule) {
        return switch (rule) {
            case FROM_NEW_CRUISE -> "Preset from new cruise";
            case SAME_SURFACE_POSITION -> "Preset at the same position as today";
            case BEST_FOR_EACH -> "Preset the best for each";
        };
    }
}
