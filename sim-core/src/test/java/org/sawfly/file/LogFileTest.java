package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sawfly.study.log.HeightLog;

class LogFileTest {
    private static final String GOOD = "time_s,height_m\n0,1.2\n0.1,1.3\n0.2,1.25\n";

    @TempDir
    private Path folder;

    private final Problems problems = new Problems();

    private HeightLog read(String text) throws IOException {
        return read(new ByteArrayInputStream(text.getBytes(StandardCharsets.ISO_8859_1)));
    }

    private HeightLog read(InputStream in) throws IOException {
        return LogFile.read("log.csv", in, problems, LogFile.MOST_ROWS);
    }

    private String complaint(String text) throws IOException {
        assertThat(read(text)).isNull();
        return String.join("\n", problems.all().stream().map(Problem::toString).toList());
    }

    @Test
    void readsTimesAndHeights() throws IOException {
        HeightLog log = read(GOOD);
        assertThat(log.times()).containsExactly(0, 0.1, 0.2);
        assertThat(log.heights()).containsExactly(1.2, 1.3, 1.25);
        assertThat(log.wind(0, 1)).isNaN();
    }

    @Test
    void takesWhatLoggersAndEditorsWrite() throws IOException {
        String text =
                "\u00EF\u00BB\u00BF# invented\r\n\r\n\"Battery\", Height_m ,TIME_MS,wind_mps\r\n3.9,+1.2,100,2\r\n"
                        + "3.9,,200,2\r\n3.9,1.25e1,300,\r\n3.9,\"12.6\",400,3\r\n3.9,12";
        HeightLog log = read(text);
        assertThat(problems.all()).isEmpty();
        assertThat(log.times()).containsExactly(0.1, 0.3, 0.4);
        assertThat(log.heights()).containsExactly(1.2, 12.5, 12.6);
        assertThat(log.wind(0, 1)).isEqualTo(2.5);
        assertThat(log.wind(0.2, 0.35)).isNaN();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            EMPTY | log.csv: the log is empty
            # only words | log.csv: the log is empty
            time_s,height_m | log.csv: fewer than two samples under the heading
            height_m;1.2;1.3 | log.csv:1:1: two columns are needed
            0,1.2;0.1,1.3 | log.csv:1:1: the heading is missing
            time,height_m;0,1 | Maybe "time" is it: call it time_s when it is in seconds
            time_s,altitude_ft;0,1 | Maybe "altitude_ft" is in feet: divide by 3.281
            time_s,alt;0,1 | Maybe "alt" is it: call it height_m
            time_s,height_m;0,1.2;0.1,abc;0.2,1 | log.csv:3:5: height_m: a number is needed in m, not the text "abc"
            time_s,height_m;0,1.2;,1.3;0.2,1 | log.csv:3:1: time_s: a number is needed in s, not nothing
            time_s,height_m;0,1.2;0.1,NaN;0.2,1 | not the text "NaN"
            time_s,height_m;0,1.2;0.1,1e999;0.2,1 | out of range
            time_s,height_m;0,101325;0.1,101320 | Maybe it is a pressure
            time_s,height_m;0,1.2;0.2,1.3;0.1,1.3 | log.csv:4:1: time_s: 0.1 s does not come after 0.2 s
            time_s,height_m;0,1.2;0.2,1.3;0.1,1.3 | Maybe the clock began anew
            time_s,height_m;7,1.2;7,1.3;8,1.3 | Maybe the times are rounded
            time_s,height_m;0,1,2;0,1,3 | Maybe a comma for the decimals
            time_s,height_m;0,1.2;0.1;0.2,1.3 | log.csv:3:1: a row with fewer values
            time_s,height_m;0,1;100,1;200,1;300,2 | Maybe the times are in milliseconds
            time_s,height_m;0,1;1,1;2,1;3,2 | samples are 1 s apart: two to a hundred a second are needed
            time_s,height_m;0,1;0.0016,1;0.0033,1;0.005,2 | Maybe the times are in minutes
            """)
    void bootlessLogsAreRefusedWithPlaceAndGuess(String lines, String words) throws IOException {
        assertThat(complaint(lines.equals("EMPTY") ? "" : lines.replace(';', '\n')))
                .contains(words);
    }

    @Test
    void semicolonsTabsAndWideCharactersAreNamed() throws IOException {
        assertThat(complaint("time_s;height_m\n0;1,2\n")).contains("Maybe save it with commas between");
        assertThat(complaint("time_s\theight_m\n0\t1.2\n")).contains("separated by commas");
        assertThat(complaint("\u00FF\u00FEt\0i\0m\0e\0_\0s\0,\0h\0")).contains("no text in UTF-8");
    }

    @Test
    void aSlipInEveryRowIsSaidAFewTimes() throws IOException {
        complaint("time_s,height_m\n" + "x,y\n".repeat(1000));
        assertThat(problems.all()).hasSizeBetween(2, 6);
    }

    @Test
    void launchesInFeetAreSuspected() throws IOException {
        StringBuilder text = new StringBuilder("time_s,height_m\n");
        for (int i = 0; i < 400; i++) {
            double t = 0.1 * i - 15;
            double height = t < 0 ? 4 : t < 3 ? 4 + 130 * (1 - (1 - t / 3) * (1 - t / 3)) : 134 - (t - 3);
            text.append(0.1 * i).append(',').append(height).append('\n');
        }
        assertThat(complaint(text.toString())).contains("a launch of 130 m", "Maybe the heights are in feet");
    }

    /** Rows without an end, made as they are read. */
    private static InputStream endless(int rows) {
        return new InputStream() {
            private byte[] line = "time_s,height_m\n".getBytes(StandardCharsets.US_ASCII);
            private int at;
            private int row;

            @Override
            public int read() {
                return next() ? line[at++] : -1;
            }

            @Override
            public int read(byte[] into, int from, int count) {
                int given = next() ? Math.min(count, line.length - at) : -1;
                if (given > 0) {
                    System.arraycopy(line, at, into, from, given);
                    at += given;
                }
                return given;
            }

            private boolean next() {
                if (at == line.length && row < rows) {
                    line = (row++ + ",1\n").getBytes(StandardCharsets.US_ASCII);
                    at = 0;
                }
                return at < line.length;
            }
        };
    }

    @Test
    void tenMillionRowsAreRefusedInBoundedTime() throws IOException {
        assertThat(read(endless(10_000_000))).isNull();
        assertThat(problems.all())
                .singleElement()
                .asString()
                .startsWith("log.csv:2000002:1: more than 2000000 samples in all logs together");
    }

    @Test
    void aFileWithoutLineEndsFillsNoMemory() throws IOException {
        assertThat(read(new InputStream() {
                    @Override
                    public int read() {
                        return 'a';
                    }
                }))
                .isNull();
        assertThat(problems.all()).singleElement().asString().contains("longer than 4000 characters");
    }

    @Test
    void rubbishIsRefusedNotThrown() throws IOException {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 500; i++) {
            byte[] bytes = GOOD.repeat(3).getBytes(StandardCharsets.US_ASCII);
            for (int k = 0; k < 3; k++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            HeightLog log = LogFile.read("log.csv", new ByteArrayInputStream(bytes), new Problems(), 1000);
            if (log != null) {
                assertThat(log.interval()).as("case %d", i).isGreaterThan(0);
            }
        }
    }

    @Test
    void filesAreFoundAndReadOnce() throws IOException {
        Path good = Files.writeString(folder.resolve("good.csv"), GOOD);
        assertThat(LogFile.read(List.of(good)))
                .singleElement()
                .satisfies(log -> assertThat(log.interval()).isCloseTo(0.1, within(1e-12)));
        assertThatThrownBy(() -> LogFile.read(List.of(good, good)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("good.csv: is named twice");
        assertThatThrownBy(() -> LogFile.read(List.of(folder.resolve("god.csv"), folder)))
                .hasMessageContaining("god.csv: there is no such file")
                .hasMessageContaining("Maybe " + good)
                .hasMessageContaining("is a folder");
    }
}
