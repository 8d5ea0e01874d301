package org.sawfly.cli.answer;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Difference;
import org.sawfly.quantity.Direction;
import org.sawfly.quantity.Numbers;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;
import org.sawfly.study.PairedDraws;
import org.sawfly.study.Reason;
import org.sawfly.study.Result;
import org.sawfly.study.ResultQuantities;
import org.sawfly.study.Spread;

/** How sure the differences from today are: what paired draws of everything uncertain say, in numbers and in words. */
public final class HowSure {
    /** The numbers that are drawn. */
    public static final List<Quantity<Result>> TOLD = List.of(
            ResultQuantities.MASS,
            ResultQuantities.NOSE_LEAD,
            ResultQuantities.CG,
            ResultQuantities.STATIC_MARGIN,
            ResultQuantities.LAUNCH_MARGIN,
            ResultQuantities.APEX_HEIGHT,
            ResultQuantities.SETTLED_HEIGHT,
            ResultQuantities.FIRST_SWING,
            ResultQuantities.MIN_SINK,
            ResultQuantities.STILL_AIR_CIRCLING);

    private static final double NEAR_THE_GREATEST = 0.5;

    private final PairedDraws draws;
    private final long seed;

    /**
     * What draws gave.
     *
     * @param draws of {@link #TOLD}; version 0 is today
     * @param seed of the draws
     */
    public HowSure(PairedDraws draws, long seed) {
        this.draws = draws;
        this.seed = seed;
    }

    /** Whether a range of this number is known. */
    static boolean tells(Quantity<Result> quantity) {
        return TOLD.stream().anyMatch(told -> told.key().equals(quantity.key()));
    }

    /** Difference of a version, counted from 1, from today. */
    Spread difference(int version, Quantity<Result> quantity) {
        return draws.difference(version, quantity);
    }

    /** Likely range of that difference. */
    Band band(int version, Quantity<Result> quantity) {
        return difference(version, quantity).likely();
    }

    /** Whether it is clear that a version launches higher or lower than today. */
    boolean clear(int version) {
        Band height = band(version, ResultQuantities.APEX_HEIGHT);
        return height.low() >= 0 || height.high() <= 0;
    }

    /** One end of the likely range of the launch height against today's: "0.2 lower". */
    String launchEnd(int version, ToDoubleFunction<Band> end) {
        Quantity<Result> height = ResultQuantities.APEX_HEIGHT;
        return new Difference(0, end.applyAsDouble(band(version, height)), height.unit(), height.decimals())
                .wordsWithoutUnit(Direction.HEIGHT);
    }

    /** What {@link #lostCount} counts. */
    String lostOf() {
        return "no glide, of " + draws.count() + " draws";
    }

    /** In how many draws a version does not come into a glide. */
    String lostCount(int version) {
        return String.valueOf(missing(version));
    }

    /** The likely range of the launch height against today's, in words: "0.2 m lower to 0.3 m higher". */
    String height(int version) {
        Quantity<Result> height = ResultQuantities.APEX_HEIGHT;
        return Direction.HEIGHT.range(band(version, height), height.unit(), height.decimals());
    }

    /** Puts the draws into the results. */
    void put(Fields results) {
        Fields fields = results.section("how_sure");
        fields.put("draws", draws.count());
        fields.put("drawn", draws.drawn());
        fields.put("agree_with_what_was_seen", draws.agreeing());
        fields.put("seed", seed);
    }

    /** Puts the likely ranges of today's numbers or, counted from 1, of a version's. */
    void putValues(int version, Fields own) {
        TOLD.forEach(
                quantity -> own.band(quantity, draws.value(version, quantity).likely()));
        own.put("draws_without_launch", missing(version));
    }

    /** Puts middle and likely range of a version's differences from today, and what the range of the launch hangs on. */
    void putDifferences(int version, Fields changes) {
        for (Quantity<Result> quantity : TOLD) {
            Spread spread = difference(version, quantity);
            changes.section("medians").put(quantity.key(), spread.median(), quantity.decimals());
            changes.band(quantity, spread.likely());
        }
        putReasons(version, changes);
    }

    /** Puts what the range of a version's launch hangs on. */
    void putReasons(int version, Fields fields) {
        for (Reason reason : all(version)) {
            Fields item = fields.item("range_hangs_on");
            item.put("what", reason.of().words());
            item.put("share_pct", Unit.PERCENT.fromSi(reason.share()), 0);
        }
    }

    /** What the range of a version's launch hangs on, as far as it comes near the greatest: "neutral point (58 %)". */
    String reasons(int version) {
        List<Reason> all = all(version);
        return all.stream()
                .filter(reason ->
                        reason.share() >= NEAR_THE_GREATEST * all.get(0).share())
                .map(reason ->
                        reason.of().words() + " (" + Numbers.fixed(Unit.PERCENT.fromSi(reason.share()), 0) + " %)")
                .collect(Collectors.joining(", "));
    }

    /** The launch height of a version against today's, and why that is open: "launch ... higher. Why: ... (58 %)." */
    String launchAndReasons(int version) {
        String reasons = reasons(version);
        return "launch " + height(version) + "." + (reasons.isEmpty() ? "" : " Why: " + reasons + ".") + lost(version)
                + seen();
    }

    /** The greatest of the reasons in words; empty for none. */
    String greatestReason(int version) {
        return all(version).stream()
                .findFirst()
                .map(reason -> reason.of().words())
                .orElse("");
    }

    /** What became of what was seen in flight; empty where all draws agree with it. */
    String seen() {
        int agreeing = draws.agreeing();
        if (agreeing == draws.drawn()) {
            return "";
        }
        String agree = " of " + draws.drawn() + " draws " + (agreeing < 2 ? "agrees" : "agree")
                + " with what was seen in flight";
        return draws.heeded()
                ? " " + agreeing + agree + "; the others are left out."
                : (agreeing == 0 ? " None" : " Only " + agreeing) + agree
                        + ", so it is left aside: look at the file again.";
    }

    /** Said of a glider that in some draws does not fly as it should; else empty. */
    String lost(int version) {
        int then = missing(version);
        return then <= missing(0)
                ? ""
                : " In " + then + " of " + draws.count() + " draws it does not come into a glide; today in "
                        + missing(0) + ".";
    }

    private List<Reason> all(int version) {
        return draws.differenceReasons(version, ResultQuantities.APEX_HEIGHT);
    }

    private int missing(int version) {
        return draws.missing(version, ResultQuantities.SETTLED_HEIGHT);
    }
}
