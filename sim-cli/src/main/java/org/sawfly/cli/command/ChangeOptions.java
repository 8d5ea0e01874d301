package org.sawfly.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sawfly.file.Settings;
import org.sawfly.study.Setting;
import picocli.CommandLine.Option;

/** What is changed, what is kept for it, and how it is flown. */
final class ChangeOptions {
    private static final List<String> KEEPS = List.of("nothing", "cg", "margin");
    private static final List<String> MOVERS = List.of("battery", "nose_lead");
    private static final List<String> RULES = List.of("from_new_cruise", "same_surface_position", "best_for_each");

    private static final List<String> PUSHES = List.of("same", "best");
    private static final String BOTH = "both";
    private static final List<String> MODELS = List.of("tail_volume", "strip", BOTH);
    private static final List<String> CONTROLS = List.of("elevator", "rudder", "aileron");

    @Option(
            names = "--change",
            paramLabel = "KEY=VALUE,...",
            description = "values of the glider's or the launch's file to change, boom.cut_mm=40")
    private List<String> changes = new ArrayList<>();

    @Option(
            names = "--keep",
            paramLabel = "RULE",
            split = ",",
            description = "what stays as it is today: nothing, cg or margin")
    private List<String> keeps = new ArrayList<>();

    @Option(
            names = "--with",
            paramLabel = "WHAT",
            split = ",",
            description = "what is moved for it, in this order: battery, nose_lead")
    private List<String> movers = new ArrayList<>();

    @Option(
            names = "--preset",
            paramLabel = "RULE",
            description = "what the launch preset is counted from: from-new-cruise, same-surface-position or "
                    + "best-for-each")
    private String preset;

    @Option(
            names = "--pilot",
            paramLabel = "RULE",
            description = "when the pilot pushes over: same as ever, or at the best moment for each version")
    private String pilot;

    @Option(
            names = "--axes",
            paramLabel = "AXES",
            description = "freedoms that are flown: pitch, pitch-yaw or all (all with --model strip)")
    private String axes;

    @Option(
            names = "--model",
            paramLabel = "MODEL",
            description = "model of the air forces: tail-volume (fast) or strip; compare also takes both")
    private String model;

    @Option(
            names = "--hands-off",
            paramLabel = "WHAT",
            split = ",",
            description = "controls the pilot leaves alone: elevator, rudder, aileron")
    private List<String> handsOff = new ArrayList<>();

    /** What is changed, without the rules. */
    List<Setting> changes() {
        List<Setting> all = new ArrayList<>();
        for (String change : changes) {
            for (Setting setting : Settings.parse(change, "--change")) {
                if (all.stream().anyMatch(other -> other.path().equals(setting.path()))) {
                    throw new CommandException(Exit.WRONG_USE, "--change " + setting.path() + " is there twice");
                }
                all.add(setting);
            }
        }
        return all;
    }

    /** What is to be kept, one after the other; empty when not said. */
    List<String> keeps() {
        return keeps.stream().map(keep -> known(keep, KEEPS, "--keep")).toList();
    }

    /** The setting of one keep. */
    static Setting keep(String keep) {
        return new Setting("rebalance.keep", keep);
    }

    /** How it is gone about: movers, preset rule, axes. */
    List<Setting> rules() {
        List<Setting> rules = new ArrayList<>();
        if (!movers.isEmpty()) {
            List<String> known =
                    movers.stream().map(mover -> known(mover, MOVERS, "--with")).toList();
            rules.add(new Setting("rebalance.with", "[" + String.join(", ", known) + "]"));
        }
        if (preset != null) {
            rules.add(new Setting("preset", known(preset, RULES, "--preset")));
        }
        if (pilot != null) {
            rules.add(new Setting("pilot.pushes", known(pilot, PUSHES, "--pilot")));
        }
        if (axes != null) {
            rules.add(new Setting("axes", axes()));
        }
        if (model != null) {
            rules.add(new Setting("model", model()));
        }
        for (String control : handsOff) {
            rules.add(new Setting("pilot." + known(control, CONTROLS, "--hands-off"), "off"));
        }
        return rules;
    }

    /** Whether both models are asked for, side by side. */
    boolean bothModels() {
        return model != null && plain(model).equals(BOTH);
    }

    /** How it is gone about by one of both models. */
    List<Setting> rules(String oneModel) {
        List<Setting> rules = new ArrayList<>(rules());
        rules.removeIf(rule -> rule.path().equals("model"));
        rules.add(new Setting("model", oneModel));
        return rules;
    }

    /** Everything, for a command that answers one question at a time. */
    List<Setting> all() {
        refuseBoth();
        List<Setting> all = changes();
        List<String> kept = keeps();
        if (kept.size() > 1) {
            throw new CommandException(
                    Exit.WRONG_USE, "--keep takes one rule here; compare shows several side by side");
        }
        kept.forEach(keep -> all.add(keep(keep)));
        all.addAll(rules());
        return all;
    }

    private String axes() {
        String word = plain(axes);
        if (word.equals("all") && (model == null || !model().equals("strip"))) {
            throw new CommandException(
                    Exit.WRONG_USE,
                    "--axes all is not for the fast model: roll after release needs the air forces along the whole span."
                            + " Maybe --axes all --model strip, or --axes pitch-yaw");
        }
        return known(axes, List.of("pitch", "pitch_yaw", "all"), "--axes");
    }

    private String model() {
        return known(model, MODELS, "--model");
    }

    private void refuseBoth() {
        if (bothModels()) {
            throw new CommandException(
                    Exit.WRONG_USE, "--model both is for compare with a glider and one change. Maybe --model strip");
        }
    }

    private static String known(String word, List<String> choices, String option) {
        String plain = plain(word);
        if (!choices.contains(plain)) {
            String said = String.join(", ", choices).replace('_', '-');
            throw new CommandException(Exit.WRONG_USE, option + " " + word + ": choose from " + said);
        }
        return plain;
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replace('-', '_');
    }
}
