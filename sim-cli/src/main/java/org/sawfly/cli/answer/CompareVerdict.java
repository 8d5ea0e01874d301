package org.sawfly.cli.answer;

import java.util.List;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;

/** What decides a comparison, said last. */
final class CompareVerdict {
    /** A tail volume below this share of today's is noticed. */
    private static final double NOTICED_SHARE = 0.97;

    private final Answer answer;
    private final Result today;
    private final List<Version> versions;
    private final HowSure sure;

    /** With what is known of how sure the differences are; null for nothing. */
    CompareVerdict(Answer answer, Result today, List<Version> versions, HowSure sure) {
        this.answer = answer;
        this.today = today;
        this.versions = versions;
        this.sure = sure;
    }

    void write() {
        boolean far = FarSwing.of(today)
                || versions.stream()
                        .anyMatch(version -> version.answered().result() != null
                                && FarSwing.of(version.answered().result()));
        if (far) {
            FarSwing.say(answer);
        }
        if (Cautions.littleMargin(today)) {
            answer.verdict("Today already it has " + margins(today)
                    + ": move the CG forward before any full throw, whatever else you change.");
        }
        if (versions.size() == 1) {
            answer.verdict(capital(of(versions.get(0))));
            return;
        }
        Version highest = null;
        double most = 0;
        for (Version version : versions) {
            if (!version.answered().flew() || dangerous(version.answered().result())) {
                answer.verdict(capital(version.label()) + ": " + of(version));
                continue;
            }
            double gain = height(version).amount();
            if (highest == null || gain > most) {
                highest = version;
                most = gain;
            }
        }
        if (highest != null) {
            best(highest);
        }
    }

    private void best(Version highest) {
        Difference height = height(highest);
        String label = "\"" + highest.label() + "\"";
        if (!clear(highest)) {
            answer.verdict("None is clearly higher than today, not even the best, " + label
                    + ": choose by feel and weight, not by height.");
        } else if (height.amount() >= Seeing.HEIGHT_M) {
            Fields fields = answer.results().section("changes").section(highest.label());
            double scatter = today.plan().launch().thrower().heightScatter();
            answer.verdict("The highest launch has " + label + ", " + height.words(Direction.HEIGHT) + " than today, "
                    + Seeing.throwsWords(fields, height.amount(), scatter) + ".");
        } else if (height.amount() > -Seeing.HEIGHT_M) {
            answer.verdict("The best launch, " + label + ", is "
                    + (height.same() ? "as high as today's" : height.words(Direction.HEIGHT) + " than today's")
                    + ": choose by feel and weight, not by height.");
        } else {
            answer.verdict(
                    "None goes as high as today: the best, " + label + ", is " + height.words(Direction.HEIGHT) + ".");
        }
    }

    /** Whether the range of the launch against today's lies on one side; nothing else is claimed without ranges. */
    private boolean clear(Version version) {
        return sure == null || sure.clear(number(version));
    }

    /** Counted from 1: today is number 0 of the draws. */
    private int number(Version version) {
        return versions.indexOf(version) + 1;
    }

    private Difference height(Version version) {
        return Difference.of(
                ResultQuantities.APEX_HEIGHT, today, version.answered().result());
    }

    private static String margins(Result result) {
        double atLaunch = ResultQuantities.LAUNCH_MARGIN.shown(result);
        return ResultQuantities.STATIC_MARGIN.text(result) + " % margin and "
                + (atLaunch <= 0 ? "none" : ResultQuantities.LAUNCH_MARGIN.text(result) + " %") + " at launch speed";
    }

    private boolean dangerous(Result result) {
        boolean worse = ResultQuantities.LAUNCH_MARGIN.shown(result) < ResultQuantities.LAUNCH_MARGIN.shown(today);
        return Cautions.littleMargin(result) && (worse || !Cautions.littleMargin(today));
    }

    private String of(Version version) {
        Result result = version.answered().result();
        if (!version.answered().flew()) {
            return "no launch to compare (" + version.answered().ended() + "). Don't.";
        }
        if (dangerous(result)) {
            return "it has " + margins(result) + ": it may tuck when thrown hard. Don't.";
        }
        if (Cautions.smallFin(result) && !Cautions.smallFin(today)) {
            return launch(version) + " The fin is then smaller than such gliders have: do less, or fit a "
                    + "larger fin.";
        }
        boolean less = ResultQuantities.TAIL_VOLUME_H.value(result)
                < NOTICED_SHARE * ResultQuantities.TAIL_VOLUME_H.value(today);
        if (Cautions.smallTailplane(result) && less) {
            return launch(version) + " " + otherwise(version, result)
                    + " The tailplane is then smaller than such gliders have: looser in pitch, so try it gently.";
        }
        return Cautions.littleMargin(today) ? launch(version) : launch(version) + " " + otherwise(version, result);
    }

    private String launch(Version version) {
        Difference height = height(version);
        String amount = Numbers.fixed(Math.abs(height.amount()), 1);
        if (!clear(version)) {
            return subject(version) + " makes no clear difference to the launch.";
        }
        if (height.same()) {
            return subject(version) + " leaves the launch as it is.";
        }
        Fields fields = answer.results().section("changes").section(version.label());
        double scatter = today.plan().launch().thrower().heightScatter();
        String shown = Seeing.throwsWords(fields, height.amount(), scatter);
        String way = height.amount() < 0 ? " lowers the launch by " : " raises the launch by ";
        return subject(version) + way + amount + " m, " + shown + ".";
    }

    private String otherwise(Version version, Result result) {
        Difference height = height(version);
        Difference mass = Difference.of(ResultQuantities.MASS, today, result);
        String weight = mass.same() ? "It weighs the same" : "It is " + mass.words(Direction.WEIGHT);
        double damping = result.feel().yawDamping() / today.feel().yawDamping();
        String feel = damping < 0.97 ? " and a little looser" : damping > 1.03 ? " and a little steadier" : "";
        if (!clear(version) || Math.abs(height.amount()) < Seeing.HEIGHT_M) {
            return weight + feel + ". Do it " + purpose(version) + ".";
        }
        return weight + feel + ". "
                + (height.amount() < 0
                        ? "For height alone, leave it."
                        : Cautions.littleMargin(result) ? "Not for a full throw yet." : "Worth trying gently.");
    }

    private static String purpose(Version version) {
        return version.cuts()
                ? "if you want it shorter, not if you want it higher"
                : "for another reason, not for height";
    }

    private static String subject(Version version) {
        return version.cuts() ? "The cut" : "The change";
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
