package org.sawfly.cli.answer;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.strength.Reserve;
import org.sawfly.study.BoomQuantities;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Setting;

/** What to heed, by what an answer leads to. */
public final class Cautions {
    /** Before a saw. */
    public static final String CUT =
            "cut carbon wet or with extraction; glasses, dust mask, gloves. Cut less first: what is off stays off.";
    /** Before glue. */
    public static final String GLUE =
            "epoxy and its dust can make you allergic for life: gloves, fresh air. Let it cure fully before any load.";
    /** Before a drill, and for whoever has drilled. */
    public static final String DRILL =
            "a hole weakens a thin boom: off the side faces, small, round edges, wrap over. Look there before every session.";
    /** Before moving lead or battery. */
    public static final String LEAD =
            "fix lead and battery well: in the spin they pull sideways about 60 times their weight.";
    /** Before a throw. */
    public static final String THROW =
            "nobody in the whole circle or along the line of flight: a glider at 35 m/s carries 140 J and can leave early.";
    /** After a change. */
    public static final String FIRST_FLIGHTS =
            "after a change check directions and range, then a hand toss, half a throw, three quarters.";
    /** With little margin. */
    public static final String LITTLE_MARGIN =
            "Warning: little or no margin at launch speed: it may tuck or swing round "
                    + "when thrown hard. CG forward before any full throw.";
    /** With a small fin. */
    public static final String SMALL_FIN =
            "Warning: the fin is below what such gliders have: it may swing round when thrown hard. No full throw before it "
                    + "has been tried gently.";

    /** With both. */
    public static final String LITTLE_OF_BOTH =
            "Warning: little or no margin at launch speed, and a small fin: it may tuck "
                    + "or swing round when thrown hard. CG forward before any full throw.";

    /** With little margin in some rows of a table. */
    public static final String LITTLE_MARGIN_IN_ROWS =
            "Warning: little or no margin in the rows marked !: thrown hard it may tuck or swing round there. "
                    + "No full throw with any of them.";

    /** Less margin than this at the glide is little, in percent of the chord; common practice, no source. */
    static final double LITTLE_MARGIN_PCT = 2;

    private Cautions() {}

    /** For changes that are going to be made. */
    public static List<String> of(List<Setting> changes) {
        List<String> cautions = new ArrayList<>();
        for (Setting change : changes) {
            for (String caution : of(change.path())) {
                if (!cautions.contains(caution)) {
                    cautions.add(caution);
                }
            }
        }
        return cautions;
    }

    /** The same for whoever does it, step by step: a cut is glued, and lead or battery are moved for it. */
    static List<String> onTheBench(List<Setting> changes) {
        List<String> cautions = of(changes);
        if (cautions.contains(CUT) && !cautions.contains(GLUE)) {
            cautions.add(GLUE);
        }
        if (!cautions.contains(LEAD)) {
            cautions.add(LEAD);
        }
        return cautions;
    }

    private static List<String> of(String path) {
        if (path.equals("boom.cut_mm") || path.startsWith("cut")) {
            return List.of(CUT);
        }
        if (path.startsWith("boom.splice")) {
            return List.of(CUT, GLUE);
        }
        if (path.startsWith("boom.holes") || path.startsWith("boom.slots")) {
            return List.of(DRILL);
        }
        if (path.startsWith("boom")) {
            return List.of(GLUE);
        }
        if (path.startsWith("nose_lead") || path.startsWith("parts") || path.startsWith("ready_to_fly")) {
            return List.of(LEAD);
        }
        return List.of(FIRST_FLIGHTS);
    }

    /** A boom that bears little more than a throw asks. */
    public static String weakSpot(String which, Reserve weakest) {
        return "Weak spot, " + which + ": by this estimate the boom bears only " + BoomQuantities.RESERVE.text(weakest)
                + " times the load at " + BoomQuantities.PLACE.text(weakest) + " mm. Do not throw it hard. Mend it or"
                + " replace it.";
    }

    /** Warnings that a result itself calls for. */
    public static List<String> of(Result result) {
        if (littleMargin(result)) {
            return List.of(smallFin(result) ? LITTLE_OF_BOTH : LITTLE_MARGIN);
        }
        return smallFin(result) ? List.of(SMALL_FIN) : List.of();
    }

    /** Whether there is little margin to begin with, or none left at launch speed. */
    public static boolean littleMargin(Result result) {
        return littleMargin(ResultQuantities.STATIC_MARGIN.value(result), ResultQuantities.LAUNCH_MARGIN.value(result));
    }

    /** The same for a row of a sweep. */
    static boolean littleMargin(VaryRow row) {
        return littleMargin(row.value(ResultQuantities.STATIC_MARGIN), row.value(ResultQuantities.LAUNCH_MARGIN));
    }

    private static boolean littleMargin(double gliding, double atLaunch) {
        return gliding < LITTLE_MARGIN_PCT || atLaunch <= 0;
    }

    /** The warning of a result as the last words of an answer about something else; empty when there is none. */
    static String lastWords(Result result) {
        if (littleMargin(result)) {
            return "Not for hard throws as it is: little or no margin at launch speed"
                    + (smallFin(result) ? ", and a small fin" : "") + ". Put the CG forward first.";
        }
        return smallFin(result) ? "Not for hard throws as it is: the fin is below what such gliders have." : "";
    }

    /** Whether the tailplane is below the usual range. */
    public static boolean smallTailplane(Result result) {
        return ResultQuantities.TAIL_VOLUME_H.value(result) < Usual.TAIL_VOLUME_H.low();
    }

    /** Whether the fin is below the usual range. */
    public static boolean smallFin(Result result) {
        return ResultQuantities.TAIL_VOLUME_V.value(result) < Usual.TAIL_VOLUME_V.low();
    }
}
