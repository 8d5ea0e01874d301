package org.sawfly.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

class FitErrorsTest {
    /** Units of the last digit by which two Java versions may differ after a fit. */
    private static final double ROUNDING = 1.01;

    private final FitErrors errors = new FitErrors();

    @Test
    void theNoteAgreesWithAFreshRun() throws IOException {
        String note = Files.readString(FitErrors.NOTE);
        String table =
                note.substring(note.indexOf(FitErrors.BEGIN) + FitErrors.BEGIN.length(), note.indexOf(FitErrors.END));
        String[] noted = table.split("[| ]+");
        String[] fresh = errors.table().split("[| ]+");
        assertThat(noted).hasSameSizeAs(fresh);
        for (int i = 0; i < fresh.length; i++) {
            if (fresh[i].matches("[-+]?\\d+\\.\\d+")) {
                double unit = Math.pow(10, -(fresh[i].length() - 1 - fresh[i].indexOf('.')));
                assertThat(Double.parseDouble(noted[i]))
                        .isCloseTo(Double.parseDouble(fresh[i]), within(ROUNDING * unit));
            } else {
                assertThat(noted[i]).isEqualTo(fresh[i]);
            }
        }
    }

    /** A fresh fit ends where the committed numbers are: they agree to the digits written, as drag shows. */
    @Test
    void theCommittedNumbersAreThoseOfTheFit() {
        SectionCorrelation fresh = errors.fit();
        close(fresh.lift(), SectionCorrelation.FITTED.lift());
        close(fresh.drag(), SectionCorrelation.FITTED.drag());
        close(fresh.moment(), SectionCorrelation.FITTED.moment());
    }

    private static void close(double[] fresh, double[] committed) {
        for (int i = 0; i < fresh.length; i++) {
            assertThat(Math.abs(fresh[i] - committed[i]))
                    .as("number %d: %s against %s", i, fresh[i], committed[i])
                    .isLessThan(2e-3 * Math.max(1, Math.abs(committed[i])));
        }
    }

    /** The aim: half the points within 20 % at Re 60 000 and 12 % from 100 000 to 300 000. */
    @Test
    void halfThePointsLieWithinTheAim() {
        List<double[]> all = errors.dragErrors(SectionCorrelation.FITTED, null);
        double[] aim = {0.20, 0.12, 0.12, 0.12, 0.12};
        for (int b = 0; b < aim.length; b++) {
            assertThat(FitErrors.quantile(FitErrors.absolute(FitErrors.band(all, b)), 0.5))
                    .isLessThan(aim[b]);
        }
    }
}
