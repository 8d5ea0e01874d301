package org.sawfly.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Makes changed trees: one laid over another, or one value set at a path. The trees themselves stay as they are. */
final class Edit {
    /** Keys of which only one is meant to stand in a map: who gives one takes back the others. */
    private static final List<Set<String>> EITHER = List.of(
            Set.of("ahead_mm", "behind_mm"),
            Set.of("mass_g", "g_per_m"),
            Set.of("bend_test", "specific_modulus_MNm_per_kg"),
            Set.of("dihedral_deg", "other_tip_up_mm"),
            Set.of("usual_height_m", "release_speed_mps"),
            Set.of("first_swing_deg", "release_turns_per_s"),
            Set.of("push_over", "push_over_at_s"),
            Set.of("elevator_up_mm", "elevator_down_mm"),
            Set.of("camber_up_mm", "camber_down_mm"),
            Set.of("rudder_left_mm", "rudder_right_mm"),
            Set.of("thick_pct", "table"),
            Set.of("camber_pct", "table"),
            Set.of("area_dm2", "stations"),
            Set.of("area_dm2", "above"),
            Set.of("area_dm2", "below"));

    /** Numbers that need no reader of files to be understood. */
    private static final Pattern PLAIN_NUMBER = Pattern.compile("-?(0|[1-9][0-9]{0,15})(\\.[0-9]{1,20})?");

    private Edit() {}

    /** One tree laid over another: maps are joined key by key, everything else is replaced. */
    static Node.Keys over(Node.Keys base, Node.Keys top) {
        Node.Keys result = base;
        for (Map.Entry<String, Node.Entry> one : top.entries().entrySet()) {
            String key = one.getKey();
            Node value = one.getValue().value();
            Node before = result.get(key);
            if (before instanceof Node.Keys inner && value instanceof Node.Keys changed) {
                value = over(inner, changed);
            }
            result = withoutRivals(result, key, top)
                    .with(key, new Node.Entry(one.getValue().place(), value));
        }
        return result;
    }

    /** The tree that holds nothing but a value at a path; an error of the path is reported, and null returned. */
    static Node.Keys single(String path, Node value, Place place, Problems problems) {
        List<String> words = new ArrayList<>(List.of(path.split("\\.", -1)));
        if (words.stream().anyMatch(String::isBlank)) {
            problems.add(place, Ascii.printable(path), "is no path; a path is keys joined by points", "boom.cut_mm");
            return null;
        }
        Node inner = value;
        for (int i = words.size() - 1; i >= 0; i--) {
            inner = new Node.Keys(place, Map.of(words.get(i).strip(), new Node.Entry(place, inner)));
        }
        return (Node.Keys) inner;
    }

    /** A tree whose uppermost keys may be paths, "boom.cut_mm", as the same without points. */
    static Node.Keys spread(Node.Keys tree, Problems problems) {
        Node.Keys result = new Node.Keys(tree.place(), Map.of());
        for (Map.Entry<String, Node.Entry> one : tree.entries().entrySet()) {
            Node.Keys inner =
                    single(one.getKey(), one.getValue().value(), one.getValue().place(), problems);
            result = inner == null ? result : over(result, inner);
        }
        return result;
    }

    /** A value as it would stand in a file: a number, a word, or a map or list in braces. */
    static Node value(String written, Place place, Problems problems) {
        if (PLAIN_NUMBER.matcher(written).matches()) {
            return new Node.Scalar(place, Node.Kind.NUMBER, written);
        }
        Problems inside = new Problems();
        Node read = TreeReader.read(Source.of(place.file(), written), inside);
        for (Problem problem : inside.all()) {
            problems.add(place, "", "\"" + Ascii.printable(written) + "\": " + problem.what(), problem.maybe());
        }
        return read == null ? new Node.Scalar(place, Node.Kind.NOTHING, "") : moved(read, place);
    }

    /** The keys of a map that are, or are not, among some. */
    static Node.Keys only(Node.Keys tree, Set<String> keys, boolean among) {
        Node.Keys result = new Node.Keys(tree.place(), Map.of());
        for (Map.Entry<String, Node.Entry> one : tree.entries().entrySet()) {
            if (keys.contains(one.getKey()) == among) {
                result = result.with(one.getKey(), one.getValue());
            }
        }
        return result;
    }

    private static Node.Keys withoutRivals(Node.Keys base, String key, Node.Keys top) {
        Node.Keys result = base;
        String inDegrees = key.endsWith("_mm") ? key.substring(0, key.length() - 2) + "deg" : key;
        String inMillimetres = key.endsWith("_deg") ? key.substring(0, key.length() - 3) + "mm" : key;
        for (String rival : new String[] {inDegrees, inMillimetres}) {
            result = rival.equals(key) || top.entries().containsKey(rival) ? result : result.without(rival);
        }
        for (Set<String> group : EITHER) {
            if (group.contains(key)) {
                for (String rival : group) {
                    boolean stays = rival.equals(key) || top.entries().containsKey(rival);
                    result = stays ? result : result.without(rival);
                }
            }
        }
        return result;
    }

    private static Node moved(Node node, Place place) {
        if (node instanceof Node.Scalar scalar) {
            return new Node.Scalar(place, scalar.kind(), scalar.text());
        }
        if (node instanceof Node.Items items) {
            return new Node.Items(
                    place,
                    items.items().stream().map(item -> moved(item, place)).toList());
        }
        Node.Keys result = new Node.Keys(place, Map.of());
        for (Map.Entry<String, Node.Entry> one : ((Node.Keys) node).entries().entrySet()) {
            result = result.with(
                    one.getKey(), new Node.Entry(place, moved(one.getValue().value(), place)));
        }
        return result;
    }
}
