package org.sawfly.cli.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.sawfly.aero.ModelChoice;
import org.sawfly.aero.TailVolumeModel;
import org.sawfly.file.FileCheck;
import org.sawfly.file.ScenarioFile;
import org.sawfly.flight.Craft;
import org.sawfly.flight.FlightLog;
import org.sawfly.flight.Scenario;
import org.sawfly.motion.Linear;
import org.sawfly.quantity.Unit;
import org.sawfly.stability.CgChoice;
import org.sawfly.stability.ClassicalModes;
import org.sawfly.stability.Derivatives;
import org.sawfly.stability.Margins;
import org.sawfly.stability.Mode;
import org.sawfly.stability.Modes;
import org.sawfly.stability.TailBuildUp;
import org.sawfly.study.Relief;
import org.sawfly.study.Setting;
import org.sawfly.study.Workbench;

/** Every number that the texts about one glider show stands in their JSON. */
class ClosingNumbersTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final Workbench BENCH = new Workbench();
    private static final FlightLog LOG = new FlightLog();
    private static Case plover;

    @BeforeAll
    static void fly() {
        ScenarioFile file = ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), SCENARIOS.resolve("club.yaml"));
        Scenario scenario = file.with(List.of());
        plover = new Case(List.of(), scenario, BENCH.answer(scenario, LOG));
    }

    @Test
    void flight() {
        Map<Relief.Of, Double> gains = Relief.gains(BENCH, plover.scenario(), plover.result());
        TextNumbers.assertAllInJson(FlyAnswer.of(plover, gains));
    }

    @Test
    void sideways() {
        ScenarioFile file = ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), SCENARIOS.resolve("club.yaml"));
        Scenario scenario = file.with(List.of(
                new Setting("axes", "all"),
                new Setting("model", "strip"),
                new Setting("pilot.rudder", "off"),
                new Setting("release.held_tip_low_deg", "8")));
        Case asked = new Case(List.of(), scenario, BENCH.answer(scenario, new FlightLog()));
        TextNumbers.assertAllInJson(FlyAnswer.of(asked, Map.of()));
    }

    @Test
    void glide() {
        TextNumbers.assertAllInJson(GlideAnswer.of(plover));
    }

    @Test
    void card() {
        TextNumbers.assertAllInJson(CardAnswer.of(plover));
    }

    @Test
    void balance() {
        CgChoice choice = CgChoice.of(
                plover.result().rebalanced().glider(),
                0.068,
                g -> Margins.share(g, plover.scenario().corrections(), BENCH.models(), plover.air()));
        assertThat(Unit.GRAM.fromSi(choice.lead())).isCloseTo(14.6, within(0.1));
        CgChoice impossible = CgChoice.of(plover.result().rebalanced().glider(), 0.3, g -> 0);
        assertThat(impossible.lead()).isNaN();
        BalanceAnswer.Weighed weighed = new BalanceAnswer.Weighed(0.2314, -0.069);
        TextNumbers.assertAllInJson(BalanceAnswer.of(plover, weighed, List.of(choice, impossible)));
    }

    @Test
    void stability() {
        Craft craft = plover.result().plan().craft();
        var air = Craft.sample(plover.air());
        Linear linear =
                Linear.around(craft.mass().mass(), craft.mass().inertia(), craft.model(), 1, air, craft.cruise());
        TailVolumeModel model = TailVolumeModel.of(
                craft.glider(), craft.mass(), plover.scenario().corrections(), BENCH.models());
        Craft strip = Craft.of(
                craft.glider(),
                plover.scenario().corrections(),
                BENCH.models(),
                ModelChoice.STRIP,
                plover.scenario().settings(),
                plover.air());
        StabilityAnswer.Looked looked = new StabilityAnswer.Looked(
                Modes.of(linear),
                ClassicalModes.of(linear, craft.cruise(), air.gravity),
                Derivatives.around(craft.model(), air, craft.cruise()),
                Derivatives.around(strip.model(), air, strip.cruise()),
                TailBuildUp.of(craft.glider(), model, craft.cruise(), air.density),
                LOG);
        TextNumbers.assertAllInJson(StabilityAnswer.of(plover, looked, false));
        TextNumbers.assertAllInJson(StabilityAnswer.of(plover, looked, true));
    }

    @Test
    void check() {
        Path path = SCENARIOS.resolve("plover-ten-numbers.yaml");
        TextNumbers.assertAllInJson(CheckAnswer.of(path.toString(), FileCheck.of(path)));
    }

    @Test
    void modesInWords() {
        assertThat(ModeWords.of(new Mode(Mode.Kind.CIRCLE, 0.02, 0, Double.NaN), new Fields()))
                .isEqualTo("tightens by itself, twice the bank in 35 s");
        assertThat(ModeWords.of(new Mode(Mode.Kind.CIRCLE, -0.02, 0, Double.NaN), new Fields()))
                .startsWith("straightens by itself");
        assertThat(ModeWords.of(new Mode(Mode.Kind.CIRCLE, 1e-5, 0, Double.NaN), new Fields()))
                .isEqualTo("stays as it was set");
        assertThat(ModeWords.of(new Mode(Mode.Kind.NOSE_UP_DOWN, -8, 0, -20), new Fields()))
                .isEqualTo("no swing, over in 0.3 s");
        assertThat(ModeWords.of(new Mode(Mode.Kind.SPEED_AND_HEIGHT, -0.05, 1.26, Double.NaN), new Fields()))
                .isEqualTo("5.0 s a swing, half gone after 3 swings");
        assertThat(ModeWords.of(new Mode(Mode.Kind.SPEED_AND_HEIGHT, 0.05, 1.26, Double.NaN), new Fields()))
                .contains("grows");
        assertThat(ModeWords.of(new Mode(Mode.Kind.SPEED_AND_HEIGHT, -1, 0, 0.5), new Fields()))
                .startsWith("does not come back: twice as far in 1.4 s");
        assertThat(ModeWords.of(new Mode(Mode.Kind.NOSE_LEFT_RIGHT, -2, 4.5, Double.NaN), new Fields()))
                .isEqualTo("1.4 s a swing, gone after one");
        assertThat(ModeWords.of(new Mode(Mode.Kind.ROLL, -18, 0, Double.NaN), new Fields()))
                .isEqualTo("stops 0.1 s after the stick");
    }

    @Test
    void roundedNumbersAddUp() {
        assertThat(AddingUp.rounded(new double[] {1.04, 1.04, 1.04}, 3.1, 1)).containsExactly(1.1, 1.0, 1.0);
        assertThat(AddingUp.rounded(new double[] {0.99, 2.27, -0.14}, 3.1, 1)).containsExactly(1.0, 2.3, -0.2);
        assertThat(AddingUp.rounded(new double[] {2, 3}, 5, 1)).containsExactly(2, 3);
    }
}
