package org.sawfly.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects what is wrong (refused) and what is odd (told, and gone on with) while inputs are read. */
final class Problems {
    private final Set<Problem> refused = new LinkedHashSet<>();
    private final Set<Problem> doubts = new LinkedHashSet<>();

    void add(Place place, String path, String what, String maybe) {
        refused.add(new Problem(place, path, what, maybe));
    }

    void add(Place place, String path, String what) {
        add(place, path, what, "");
    }

    /** Something unusual that is not refused. */
    void doubt(Place place, String path, String what, String maybe) {
        doubts.add(new Problem(place, path, what, maybe));
    }

    boolean any() {
        return !refused.isEmpty();
    }

    List<Problem> all() {
        return sorted(refused);
    }

    List<Problem> doubts() {
        return sorted(doubts);
    }

    /** Ends reading with everything found, if anything was. */
    void throwIfAny() {
        if (any()) {
            throw new InputException(all());
        }
    }

    private static List<Problem> sorted(Set<Problem> set) {
        List<Problem> list = new ArrayList<>(set);
        list.sort(null);
        return List.copyOf(list);
    }
}
