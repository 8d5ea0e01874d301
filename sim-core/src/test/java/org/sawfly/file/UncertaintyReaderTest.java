package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sawfly.study.SeenInFlight;
import org.sawfly.study.Setting;
import org.sawfly.study.Uncertain;
import org.sawfly.study.Uncertainties;

class UncertaintyReaderTest {
    private static final Path SCENARIOS = Path.of("../scenarios");

    @TempDir
    Path folder;

    private ScenarioFile with(String glider, String launch) throws IOException {
        Path gliderFile = folder.resolve("plover.yaml");
        Path launchFile = folder.resolve("club.yaml");
        Files.writeString(gliderFile, Files.readString(SCENARIOS.resolve("plover.yaml")) + glider);
        Files.writeString(launchFile, Files.readString(SCENARIOS.resolve("club.yaml")) + launch);
        return ScenarioFile.open(gliderFile, launchFile);
    }

    @Test
    void leftOutTheyAreAsUsual() throws IOException {
        assertThat(with("", "").uncertainties()).isEqualTo(Uncertainties.USUAL);
    }

    @Test
    void eitherFileMaySayOtherwise() throws IOException {
        Uncertainties read = with("\nuncertain: {drag_pct: 4, cg_mm: 0}\n", "\nthrow_uncertain: {nose_out_deg: 6}\n")
                .uncertainties();
        assertThat(read.halfWidth(Uncertain.DRAG)).isCloseTo(0.04, within(1e-12));
        assertThat(read.halfWidth(Uncertain.CG)).isZero();
        assertThat(read.halfWidth(Uncertain.NOSE_OUT)).isCloseTo(Math.toRadians(6), within(1e-12));
        assertThat(read.halfWidth(Uncertain.DOWNWASH)).isEqualTo(Uncertain.DOWNWASH.usual());
    }

    @Test
    void aSettingMayToo() throws IOException {
        Uncertainties read = with("", "")
                .uncertainties(
                        List.of(new Setting("uncertain.drag_pct", "3"), new Setting("throw_uncertain.climb_deg", "2")));
        assertThat(read.halfWidth(Uncertain.DRAG)).isCloseTo(0.03, within(1e-12));
        assertThat(read.halfWidth(Uncertain.CLIMB)).isCloseTo(Math.toRadians(2), within(1e-12));
    }

    @Test
    void theElevatorCountsOnlyWithAMeasuredDecalage() throws IOException {
        ScenarioFile file = with("\nseen_in_flight: {elevator_in_cruise_up_mm: 0.5, dive_test: neutral}\n", "");
        List<Setting> measured = List.of(new Setting("tailplane.decalage_deg", "1.3"));
        assertThat(file.seen(measured).elevatorUp()).isCloseTo(0.0005, within(1e-12));
        assertThat(file.seen(measured).dive()).isEqualTo(SeenInFlight.Dive.NEUTRAL);
        ScenarioFile ten = ScenarioFile.open(SCENARIOS.resolve("plover-ten-numbers.yaml"), null);
        List<Setting> elevator = List.of(new Setting("seen_in_flight.elevator_in_cruise_up_mm", "0.5"));
        assertThat(ten.seen(elevator).elevatorUp()).isNaN();
        assertThat(ten.seen(List.of()).anything()).isFalse();
    }

    @Test
    void wildOnesAreRefusedWithTheirPlace() {
        assertThatThrownBy(() -> with("\nuncertain: {drag_pct: 400}\n", ""))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("uncertain.drag_pct");
    }

    @Test
    void whatIsOtherInAThrowIsASettingLikeAnyOther() throws IOException {
        ScenarioFile file = with("", "");
        assertThat(file.with(List.of(new Setting("throw_correction.late_s", "-0.05")))
                        .launch()
                        .doubts()
                        .late())
                .isCloseTo(-0.05, within(1e-12));
    }
}
