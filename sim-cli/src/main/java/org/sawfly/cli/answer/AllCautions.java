package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;

/** Everything to heed around the bench and the field, for those who ask for it. */
public final class AllCautions {
    private static final List<String> ALL = List.of(
            "Cutting: cut carbon wet or with extraction; glasses, dust mask, gloves. What is off stays off: cut less first."
                    + " Rotary discs shatter: shield, glasses, nothing loose. Carbon dust conducts: keep it off electronics,"
                    + " collect it wet, do not blow it about.",
            "Drilling: a hole weakens a thin boom. Off the side faces, small, edges round, wrapped over. Look there before"
                    + " every session.",
            "Gluing: epoxy and the dust of sanding it can make you allergic for life: gloves, air, none on the skin."
                    + " Superglue bonds skin, and its fumes sting. Let a joint cure fully before you load it.",
            "Lead and battery: fix them. In the spin they pull sideways about 60 times their weight. Do not file or sand"
                    + " lead; wash your hands. Never squeeze a lithium cell, drill near it or solder on it.",
            "Throwing: nobody in the whole circle or along the line of flight. A glider of 0.23 kg at 35 m/s carries 140 J"
                    + " and can leave early in any direction. Warm up. Local law, height limits and the rules of your club"
                    + " come first.",
            "First flights after a change: directions, throws and range with the hatch closed; then a hand toss, half a"
                    + " throw, three quarters. Stop at the first crack, creak or growing swing.",
            "Little margin at launch speed, or a small fin: it may tuck or swing round when thrown hard. CG forward before"
                    + " any full throw.",
            "All numbers here are estimates from a simple model and your own measurements. They are no check of"
                    + " airworthiness and no instruction. Not looked at: flutter, fatigue, hidden cracks, the quality of glue,"
                    + " servos and strings, radio, the bond of the peg. If in doubt ask somebody who has done it, and do not"
                    + " throw.");

    private AllCautions() {}

    /** As lines of a page, an empty line between any two. */
    public static List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (String caution : ALL) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            lines.addAll(new Block.Paragraph(caution, 2).lines());
        }
        return lines;
    }
}
