package org.sawfly.file;

import java.util.ArrayList;
import java.util.List;

/** What one reading of inputs collects: problems, doubts and assumptions. */
final class Reading {
    private final Problems problems;
    private final List<Assumed> assumed = new ArrayList<>();

    Reading() {
        this(new Problems());
    }

    /** Collects problems where others do too. */
    Reading(Problems problems) {
        this.problems = problems;
    }

    Problems problems() {
        return problems;
    }

    void assume(Assumed one) {
        assumed.add(one);
    }

    List<Assumed> assumed() {
        return List.copyOf(assumed);
    }
}
