package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.sawfly.file.ScenarioFile;
import org.sawfly.quantity.Band;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

class TuneTest {
    private static final Path SCENARIOS = Path.of("../scenarios");
    private static final ScenarioFile PLOVER =
            ScenarioFile.open(SCENARIOS.resolve("plover.yaml"), SCENARIOS.resolve("club.yaml"));
    private static final Workbench BENCH = new Workbench();
    private static final Tune.Aim HEIGHT = new Tune.Aim(ResultQuantities.SETTLED_HEIGHT, 0.2);

    private static Tuned tune(List<Limit> limits, Knob... knobs) {
        return new Tune(BENCH, PLOVER, List.of(), HEIGHT, limits).run(List.of(knobs), Optimiser.smooth(60));
    }

    @Test
    void aPresetIsTunedForTheSameThrow() {
        Knob preset = new Knob("preset.elevator_up_mm", "elevator in the preset", 0.8, 0, 4);
        Knob climb = new Knob("climb_deg", "steepness of the climb", 68, 50, 88);
        Tuned tuned = tune(List.of(), preset, climb);
        double plain = ResultQuantities.SETTLED_HEIGHT.value(BENCH.answer(PLOVER.with(List.of())));
        assertThat(tuned.value()).isGreaterThan(plain);
        for (Tuned.Of one : tuned.settings()) {
            assertThat(one.good().contains(one.best())).isTrue();
            assertThat(one.good().low()).isGreaterThanOrEqualTo(one.knob().low());
        }
        assertThat(tuned.flights()).isLessThan(200);
    }

    @Test
    void anOptimumThatLeansOnAnEndSaysSo() {
        Tuned tuned = tune(List.of(), new Knob("climb_deg", "steepness of the climb", 52, 50, 55));
        assertThat(tuned.free()).isFalse();
        assertThat(tuned.settings().get(0).leansHigh()).isTrue();
        assertThat(tuned.warnings())
                .singleElement()
                .asString()
                .contains("steepness of the climb leans on its upper end");
    }

    @Test
    void aLimitThatHoldsTheBestBackIsNamed() {
        Knob climb = new Knob("climb_deg", "steepness of the climb", 60, 45, 88);
        Tuned free = tune(List.of(), climb);
        double load = ResultQuantities.APEX_HEIGHT.value(BENCH.answer(PLOVER.with(List.of())));
        double limit = load - 1;
        Limit low = new Limit(ResultQuantities.APEX_HEIGHT, new Band(0, limit));
        Tuned held = tune(List.of(low), climb);
        assertThat(held.value()).isLessThan(free.value());
        assertThat(held.held()).containsExactly(low);
        assertThat(held.warnings()).anySatisfy(w -> assertThat(w).contains("launch height"));
    }

    @Test
    void aLimitAtNoughtIsNamedToo() {
        double top = ResultQuantities.APEX_HEIGHT.value(BENCH.answer(PLOVER.with(List.of()))) - 1;
        Quantity<Result> above = new Quantity<>(
                "above_m", "height above it", Unit.METRE, 1, r -> ResultQuantities.APEX_HEIGHT.value(r) - top);
        Limit none = new Limit(above, new Band(Double.NEGATIVE_INFINITY, 0));
        Tuned held = tune(List.of(none), new Knob("climb_deg", "steepness of the climb", 60, 45, 88));
        assertThat(held.held()).containsExactly(none);
    }

    @Test
    void limitsThatNothingKeepsAreNoAnswer() {
        Limit never = new Limit(ResultQuantities.MASS, new Band(900, 1000));
        assertThatThrownBy(() -> tune(List.of(never), new Knob("climb_deg", "climb", 60, 50, 80)))
                .isInstanceOf(NoAnswerException.class);
    }
}
