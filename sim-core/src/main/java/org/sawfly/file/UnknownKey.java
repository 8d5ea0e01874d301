package org.sawfly.file;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.sawfly.quantity.Unit;

/** Says what an unknown key probably means: a slip of the pen, another unit, or another word for the same thing. */
final class UnknownKey {
    /** Words people use, without unit, and the word of these files; where it lives elsewhere, with its section. */
    private static final Map<String, String> SAID = Arrays.stream("""
            stab tailplane
            stabilizer tailplane
            stabiliser tailplane
            horizontal tailplane
            horizontal_tail tailplane
            horizontal_stabilizer tailplane
            ht tailplane
            elevator tailplane
            tail tailplane
            rudder fin
            vertical fin
            vertical_tail fin
            vertical_stabilizer fin
            vt fin
            fuse pod
            fuselage pod
            body pod
            hull pod
            tailboom boom
            tail_boom boom
            tube boom
            stick boom
            main_wing wing
            wings wing
            mainplane wing
            weight mass
            auw ready_to_fly.mass_g
            all_up_weight ready_to_fly.mass_g
            flying_weight ready_to_fly.mass_g
            mass ready_to_fly.mass_g
            cog cg
            cg ready_to_fly.cg_mm
            c_g cg
            balance cg
            balance_point cg
            balances cg
            lead nose_lead
            nose_weight nose_lead
            ballast parts
            gear parts
            radio parts
            components parts
            wingspan span
            wing_span span
            half_span span
            root root_chord
            chord root_chord
            incidence decalage
            ewd decalage
            thickness thick
            camber_line camber
            length end_behind
            diameter end_diameter
            le leading_edge_behind
            bank held_tip_low
            aileron aileron_right
            leading_edge leading_edge_behind
            pilot thrower
            launcher thrower
            height usual_height
            launch_height usual_height
            altitude usual_height
            overswing first_swing
            wag first_swing
            swing first_swing
            speed release_speed
            wind air
            weather air
            sweep vary
            range vary
            start from
            min from
            begin from
            end to
            max to
            stop to
            until to
            step every
            by every
            increment every
            changes change
            variants versions
            version versions
            keep rebalance
            model glider
            plane glider
            aircraft glider
            name glider
            shorten cut
            cut_off cut
            scale scale_area
            """.lines().toArray(String[]::new))
            .map(line -> line.split(" ", 2))
            .collect(Collectors.toUnmodifiableMap(words -> words[0], words -> words[1]));

    /** Shorter words are too like others to guess at. */
    private static final int LONG_WORD = 5;

    private static final Pattern DIGITS = Pattern.compile("\\d+");

    private UnknownKey() {}

    static void report(In in, String key, Node.Entry entry, Collection<String> known, Node.Keys around) {
        Problems problems = in.reading().problems();
        String shown = Ascii.printable(key);
        boolean empty = entry.value() instanceof Node.Scalar scalar && scalar.kind() == Node.Kind.NOTHING;
        if (DIGITS.matcher(key).matches() && empty) {
            String before = valueBefore(key, around);
            problems.add(
                    entry.place(),
                    in.path(),
                    "the comma before " + shown + " ends the number before it",
                    before.isEmpty() ? "a point for the decimals" : "write " + before + "." + shown);
            return;
        }
        String maybe = maybe(key, entry.value(), inAChange(in, entry) ? withDesigns(in.path(), known) : known);
        if (maybe.isEmpty() && known.size() <= 8) {
            maybe = "one of " + String.join(", ", known);
        }
        problems.add(entry.place(), in.pathOf(shown), "unknown key", maybe);
    }

    /** Whether a key was laid over the file by a change, from a command line or a study. */
    private static boolean inAChange(In in, Node.Entry entry) {
        return !entry.place().file().equals(in.place().file());
    }

    /** The keys of a file's section and those that only a change can have there. */
    private static Collection<String> withDesigns(String section, Collection<String> known) {
        Set<String> all = new LinkedHashSet<>(known);
        all.addAll(Change.keysOf(section));
        return all;
    }

    /** What an unknown key may mean among the known ones, or an empty text. */
    static String maybe(String key, Node value, Collection<String> known) {
        String plain = key.strip().toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        if (known.contains(plain)) {
            return plain;
        }
        Optional<Unit> unit = Unit.ofKey(plain);
        String stem = stem(plain);
        String same = withStem(stem, known);
        if (!same.isEmpty()) {
            return same + converted(value, unit, same, stem.equals(plain) ? "" : plain);
        }
        String said = SAID.getOrDefault(plain, SAID.getOrDefault(stem, ""));
        String last = said.substring(said.indexOf('.') + 1);
        String meant = withStem(last, known);
        if (!meant.isEmpty()) {
            return meant + (stem.equals("half_span") ? twice(value, unit, meant) : "");
        }
        String near = Spelling.nearest(plain, known);
        if (near.isEmpty()) {
            near = withStem(misspelt(stem), known);
        }
        if (!near.isEmpty()) {
            return near;
        }
        return said.contains(".") ? said.substring(0, said.indexOf('.')) + ": {" + last + ": ...}" : "";
    }

    /** The word of these files for a misspelt word that people use; empty when none is near. */
    private static String misspelt(String stem) {
        if (stem.length() < LONG_WORD) {
            return "";
        }
        List<String> words = SAID.keySet().stream()
                .filter(word -> word.length() >= LONG_WORD)
                .sorted()
                .toList();
        String near = Spelling.nearest(stem, words);
        return near.isEmpty() ? "" : SAID.get(near);
    }

    /** What half of it means from tip to tip. */
    private static String twice(Node value, Optional<Unit> from, String right) {
        Optional<Unit> to = Unit.ofKey(right);
        double half = value instanceof Node.Scalar scalar ? NumberText.parse(scalar) : Double.NaN;
        boolean known = from.isPresent() && to.isPresent() && Double.isFinite(half);
        return (known ? ": " + Bounds.show(to.get().fromSi(from.get().toSi(2 * half))) : "")
                + " (from tip to tip, twice this)";
    }

    /** The known key that is this word, with or without a unit. */
    private static String withStem(String stem, Collection<String> known) {
        if (stem.isEmpty()) {
            return "";
        }
        return known.stream()
                .filter(k -> k.equals(stem) || stem(k).equals(stem))
                .findFirst()
                .orElse("");
    }

    private static String stem(String key) {
        Optional<Unit> unit = Unit.ofKey(key);
        if (unit.isEmpty() || key.length() <= unit.get().suffix().length() + 1) {
            return key;
        }
        return key.substring(0, key.length() - unit.get().suffix().length() - 1);
    }

    /** The value in the unit of the right key, when both units measure the same thing. */
    private static String converted(Node value, Optional<Unit> from, String right, String written) {
        Optional<Unit> to = Unit.ofKey(right);
        if (!(value instanceof Node.Scalar scalar) || to.isEmpty()) {
            return "";
        }
        double number = NumberText.parse(scalar);
        if (!Double.isFinite(number) || from.isEmpty() || written.isEmpty() || !sameKind(from.get(), to.get())) {
            return "";
        }
        return ": " + Bounds.show(to.get().fromSi(from.get().toSi(number)));
    }

    private static boolean sameKind(Unit a, Unit b) {
        List<List<Unit>> kinds = List.of(
                List.of(Unit.MILLIMETRE, Unit.METRE),
                List.of(Unit.SQUARE_DECIMETRE, Unit.SQUARE_CENTIMETRE),
                List.of(Unit.GRAM, Unit.KILOGRAM),
                List.of(Unit.SECOND, Unit.MILLISECOND));
        return a == b || kinds.stream().anyMatch(kind -> kind.contains(a) && kind.contains(b));
    }

    private static String valueBefore(String key, Node.Keys around) {
        String before = "";
        for (Map.Entry<String, Node.Entry> one : around.entries().entrySet()) {
            if (one.getKey().equals(key)) {
                return before;
            }
            before = one.getValue().value() instanceof Node.Scalar scalar ? scalar.text() : "";
        }
        return before;
    }
}
