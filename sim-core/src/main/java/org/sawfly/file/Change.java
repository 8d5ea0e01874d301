package org.sawfly.file;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a version changes, sorted by who reads it: values of the glider file, values of the launch file, how the study
 * goes about it, and changes of the airframe that move other things along.
 *
 * @param glider  laid over the glider file
 * @param launch  laid over the launch file
 * @param options cut, rebalance, preset rule, axes, model, pilot
 * @param design  cut, splice and wrap of the boom, scaled tails, wanted CG
 */
record Change(Node.Keys glider, Node.Keys launch, Node.Keys options, Node.Keys design) {
    static final Set<String> OPTIONS = Set.of("cut", "rebalance", "axes", "model", "pilot");
    private static final Set<String> LAUNCH = Set.of(
            "thrower",
            "preset",
            "climb_deg",
            "push_over",
            "push_over_at_s",
            "release",
            "air",
            "throw_correction",
            "throw_uncertain",
            "throw_scatter");
    private static final List<List<String>> DESIGN = List.of(
            List.of("boom", "cut_mm"),
            List.of("boom", "splice"),
            List.of("boom", "wrap"),
            List.of("tailplane", "scale_area"),
            List.of("fin", "scale_area"),
            List.of("ready_to_fly", "cg_mm"));

    /** The keys that only a change can have in a section, or the sections themselves at the top. */
    static Set<String> keysOf(String section) {
        Set<String> keys = new LinkedHashSet<>();
        if (section.isEmpty()) {
            keys.addAll(OPTIONS);
            keys.addAll(LAUNCH);
        }
        DESIGN.stream().filter(path -> path.get(0).equals(section)).forEach(path -> keys.add(path.get(1)));
        return keys;
    }

    /** No change. */
    static Change none(Place place) {
        Node.Keys empty = new Node.Keys(place, Map.of());
        return new Change(empty, empty, empty, empty);
    }

    /** This change and another one on top of it. */
    Change and(Change top) {
        return new Change(
                Edit.over(glider, top.glider),
                Edit.over(launch, top.launch),
                Edit.over(options, top.options),
                Edit.over(design, top.design));
    }

    /** Sorts a tree whose first words are sections of any of the files. */
    static Change sorted(Node.Keys tree) {
        Node.Keys options = Edit.only(tree, OPTIONS, true);
        Node.Keys launch = Edit.only(tree, LAUNCH, true);
        Node.Keys glider = Edit.only(Edit.only(tree, OPTIONS, false), LAUNCH, false);
        if (launch.get("preset") instanceof Node.Scalar) {
            options = options.with("preset", launch.entries().get("preset"));
            launch = launch.without("preset");
        }
        Node.Keys design = new Node.Keys(tree.place(), Map.of());
        for (List<String> path : DESIGN) {
            String section = path.get(0);
            String key = path.get(1);
            if (glider.get(section) instanceof Node.Keys inner && inner.get(key) != null) {
                Node.Entry at = glider.entries().get(section);
                Node.Keys taken =
                        new Node.Keys(inner.place(), Map.of(key, inner.entries().get(key)));
                design = Edit.over(
                        design, new Node.Keys(tree.place(), Map.of(section, new Node.Entry(at.place(), taken))));
                Node.Keys left = inner.without(key);
                glider = left.entries().isEmpty()
                        ? glider.without(section)
                        : glider.with(section, new Node.Entry(at.place(), left));
            }
        }
        return new Change(glider, launch, options, design);
    }
}
