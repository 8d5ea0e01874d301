package org.sawfly.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DemoSectionsTest {
    /** The committed tables are those the generator makes, to a digit in the last place (rounding may differ by machine). */
    @Test
    void theCommittedTablesAreWhatTheGeneratorMakes() throws IOException {
        for (var entry : DemoSections.all().entrySet()) {
            String committed = Files.readString(DemoSections.FOLDER.resolve(entry.getKey() + ".csv"));
            assertThat(committed.length()).isLessThan(400_000);
            List<double[]> before = numbers(committed);
            List<double[]> now = numbers(DemoSections.text(entry.getKey(), entry.getValue()));
            assertThat(before).hasSameSizeAs(now);
            for (int i = 0; i < now.size(); i++) {
                for (int c = 0; c < 6; c++) {
                    assertThat(Math.abs(before.get(i)[c] - now.get(i)[c]))
                            .as("%s row %d column %d", entry.getKey(), i, c)
                            .isLessThan(1.5e-4);
                }
            }
        }
    }

    private static List<double[]> numbers(String text) {
        List<double[]> rows = new ArrayList<>();
        for (String line : text.split("\n")) {
            if (!line.startsWith("#") && !line.startsWith("reynolds")) {
                String[] cells = line.split(",");
                double[] row = new double[cells.length];
                for (int i = 0; i < row.length; i++) {
                    row[i] = Double.parseDouble(cells[i]);
                }
                rows.add(row);
            }
        }
        return rows;
    }
}
