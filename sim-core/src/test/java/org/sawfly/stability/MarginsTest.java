package org.sawfly.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.DragFactors;
import org.sawfly.aero.Models;
import org.sawfly.air.Air;
import org.sawfly.air.Atmosphere;
import org.sawfly.glider.BoomCut;
import org.sawfly.glider.CgSetting;
import org.sawfly.glider.DesignException;
import org.sawfly.glider.Glider;
import org.sawfly.glider.MassProperties;
import org.sawfly.glider.Plover;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.glider.TailplaneScale;

class MarginsTest {
    private static final Models MODELS = new Models();
    private static final Air AIR = Atmosphere.STANDARD.at(0);
    private static final Glider PLOVER = Plover.glider();
    private static final double LAUNCH = 33;

    private static Margins margins(Glider glider, Corrections corrections) {
        return Margins.of(glider, corrections, MODELS, AIR, LAUNCH);
    }

    private static double share(Glider glider) {
        return Margins.share(glider, Corrections.NONE, MODELS, AIR);
    }

    private static RebalanceRule keep(RebalanceRule.Keep keep, CgSetting.Means... with) {
        return new RebalanceRule(keep, List.of(with), Double.NaN);
    }

    private static Corrections with(double tailSlope, double boomStiffness, double back) {
        return new Corrections(DragFactors.NONE, tailSlope, 1, 1, boomStiffness, 1, back);
    }

    /** Common practice, no source: 40 to 48 % of the mean chord on gliders of this kind. */
    @Test
    void neutralPointIsWhereItIsOnGlidersOfThisKind() {
        Margins m = margins(PLOVER, Corrections.NONE);
        assertThat((m.neutralPoint() - m.meanChordBack()) / m.meanChord()).isBetween(0.40, 0.48);
        assertThat(m.margin()).isCloseTo(m.neutralPoint() - 0.06902, within(1e-4));
        assertThat(m.marginShare()).isCloseTo(share(PLOVER), within(1e-12));
    }

    @Test
    void aBetterTailAndAStifferBoomMoveItBack() {
        Margins plain = margins(PLOVER, Corrections.NONE);
        assertThat(margins(PLOVER, with(1.1, 1, 0)).neutralPoint()).isGreaterThan(plain.neutralPoint() + 0.001);
        assertThat(margins(PLOVER, with(1, 2, 0)).neutralPointLaunch())
                .isGreaterThan(plain.neutralPointLaunch() + 0.001);
        assertThat(margins(PLOVER, with(1, 2, 0)).neutralPoint()).isCloseTo(plain.neutralPoint(), within(1e-9));
        assertThat(margins(PLOVER, with(1, 1, 0.003)).neutralPoint())
                .isCloseTo(plain.neutralPoint() + 0.003, within(1e-4));
    }

    @Test
    void theCgMovesTheMarginAndHardlyTheNeutralPoint() {
        Glider forward = new CgSetting(-0.064, List.of(CgSetting.Means.NOSE_LEAD)).apply(PLOVER);
        Margins before = margins(PLOVER, Corrections.NONE);
        Margins after = margins(forward, Corrections.NONE);
        assertThat(after.margin() - before.margin()).isCloseTo(0.005, within(0.0007));
        assertThat(after.neutralPoint()).isCloseTo(before.neutralPoint(), within(0.0007));
    }

    @Test
    void marginAndCgAreKeptExactly() {
        Glider cut = BoomCut.atRearEnd(0.040, 0.0005).apply(PLOVER);
        Rebalanced byMargin = Rebalance.apply(
                PLOVER, cut, keep(RebalanceRule.Keep.MARGIN, CgSetting.Means.NOSE_LEAD), MarginsTest::share);
        assertThat(share(byMargin.glider())).isCloseTo(share(PLOVER), within(1e-8));
        assertThat(byMargin.leadPutIn()).isCloseTo(byMargin.leadMass() - 0.0139, within(1e-12));
        Rebalanced byCg = Rebalance.apply(
                PLOVER, cut, keep(RebalanceRule.Keep.CG, CgSetting.Means.NOSE_LEAD), MarginsTest::share);
        assertThat(MassProperties.of(byCg.glider()).cg().x())
                .isCloseTo(MassProperties.of(PLOVER).cg().x(), within(1e-8));
        assertThat(byCg.leadMass())
                .as("a shorter boom at the same CG lets lead out")
                .isLessThan(0.0139);
        Rebalanced nothing = Rebalance.apply(PLOVER, cut, keep(RebalanceRule.Keep.NOTHING), MarginsTest::share);
        assertThat(nothing.glider()).isEqualTo(cut);
    }

    @Test
    void aShortCutWithItsJointNeedsMoreLead() {
        Glider cut = BoomCut.atRearEnd(0.010, 0.0005).apply(PLOVER);
        Rebalanced after = Rebalance.apply(
                PLOVER, cut, keep(RebalanceRule.Keep.MARGIN, CgSetting.Means.NOSE_LEAD), MarginsTest::share);
        assertThat(after.leadPutIn()).isPositive();
    }

    @Test
    void theBatteryIsMovedBeforeTheLead() {
        Glider smaller = new TailplaneScale(0.97).apply(PLOVER);
        Rebalanced after = Rebalance.apply(
                PLOVER,
                smaller,
                keep(RebalanceRule.Keep.CG, CgSetting.Means.BATTERY, CgSetting.Means.NOSE_LEAD),
                MarginsTest::share);
        assertThat(after.batteryForward()).isNegative();
        assertThat(after.leadPutIn()).isZero();
    }

    @Test
    void moreLeadOutThanThereIsIsRefusedWithWhatElseCouldMove() {
        Glider bare = PLOVER.withNoseLead(0.0001);
        RebalanceRule rule = new RebalanceRule(RebalanceRule.Keep.CG_AT, List.of(CgSetting.Means.NOSE_LEAD), 0.120);
        assertThatThrownBy(() -> Rebalance.apply(bare, bare, rule, MarginsTest::share))
                .isInstanceOf(DesignException.class)
                .hasMessageContaining("Maybe");
    }

    /** By hand: tail areas times arms to the quarter of their mean chords, over wing area times chord or span. */
    @Test
    void tailVolumesAreThoseOfPaperAndPencil() {
        Margins m = margins(PLOVER, Corrections.NONE);
        double area =
                2 * PLOVER.wing().planform().area() * Math.cos(PLOVER.wing().dihedral());
        double tail = 2 * PLOVER.tailplane().planform().area();
        double arm = 0.640 + PLOVER.tailplane().planform().quarterPointBack() - m.cg();
        TailVolumes volumes = TailVolumes.of(
                PLOVER,
                org.sawfly.aero.TailVolumeModel.of(PLOVER, MassProperties.of(PLOVER), Corrections.NONE, MODELS)
                        .reference());
        assertThat(volumes.horizontal()).isCloseTo(tail * arm / (area * m.meanChord()), within(2e-3));
        assertThat(volumes.horizontal()).as("common practice, no source").isBetween(0.34, 0.45);
        assertThat(volumes.vertical()).as("common practice, no source").isBetween(0.022, 0.033);
        assertThat(volumes.finShareBelow()).isCloseTo(0.45, within(0.02));
    }
}
