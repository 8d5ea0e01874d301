package org.sawfly.study.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sawfly.file.LogFile;

/** Keeps the example logs true; run with {@code -Dupdate} to write them anew. */
class DemoLogsTest {
    @TempDir
    private Path folder;

    static List<DemoLogs.Demo> all() {
        return DemoLogs.ALL;
    }

    /** A height may stand on the other side of where 0.1 m is rounded. */
    @ParameterizedTest
    @MethodSource("all")
    void theExampleLogsAreWhatTheirMakerMakes(DemoLogs.Demo demo) throws IOException {
        String wanted = DemoLogs.text(demo);
        if (System.getProperty("update") != null) {
            Files.createDirectories(DemoLogs.FOLDER);
            Files.writeString(DemoLogs.FOLDER.resolve(demo.file()), wanted);
        }
        HeightLog kept =
                LogFile.read(List.of(DemoLogs.FOLDER.resolve(demo.file()))).get(0);
        Path fresh = Files.writeString(folder.resolve(demo.file()), wanted);
        HeightLog made = LogFile.read(List.of(fresh)).get(0);
        assertThat(made.times()).containsExactly(kept.times());
        assertThat(made.heights()).usingComparatorWithPrecision(0.11).containsExactly(kept.heights());
    }

    @ParameterizedTest
    @MethodSource("all")
    void theTruthComesOutOfThem(DemoLogs.Demo demo) {
        HeightLog log =
                LogFile.read(List.of(DemoLogs.FOLDER.resolve(demo.file()))).get(0);
        Calibrated found = new Calibration(CalibrationTest.PLOVER).fit(List.of(log));
        assertThat(found.throwsFitted()).hasSize(8);
        assertThat(found.drag().likely().contains(demo.drag())).isTrue();
        assertThat(found.noise()).isCloseTo(0.25, within(0.05));
    }

    @Test
    void theyAreMarkedAsInvented() throws IOException {
        for (DemoLogs.Demo demo : DemoLogs.ALL) {
            assertThat(Files.readString(DemoLogs.FOLDER.resolve(demo.file()))).startsWith("# Invented: ");
        }
    }
}
