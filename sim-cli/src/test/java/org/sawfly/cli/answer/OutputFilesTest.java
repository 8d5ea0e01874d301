package org.sawfly.cli.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFilesTest {
    @TempDir
    private Path folder;

    @Test
    void writesWholeAndLeavesNoPart() throws IOException {
        Path file = folder.resolve("cut.csv");
        new OutputFiles(false).write(file, "a,b\n");
        assertThat(file).hasContent("a,b\n");
        assertThat(OutputFiles.partOf(file)).doesNotExist().hasFileName("cut.csv.part");
    }

    @Test
    void overwritesOnlyWithLeave() throws IOException {
        Path file = Files.writeString(folder.resolve("cut.csv"), "old");
        assertThatExceptionOfType(CannotWrite.class)
                .isThrownBy(() -> new OutputFiles(false).write(file, "new"))
                .withMessageContaining("exists")
                .withMessageContaining("--force");
        assertThat(file).hasContent("old");
        new OutputFiles(true).write(file, "new");
        assertThat(file).hasContent("new");
    }

    @Test
    void aFailureLeavesEverythingAsItWas() throws IOException {
        Path file = Files.writeString(folder.resolve("cut.csv"), "old");
        assertThatExceptionOfType(CannotWrite.class)
                .isThrownBy(() -> new OutputFiles(true).write(file, out -> {
                    out.write('x');
                    throw new IOException("No space left on device");
                }))
                .withMessageContaining("No space left");
        assertThat(file).hasContent("old");
        assertThat(OutputFiles.partOf(file)).doesNotExist();
    }

    @Test
    void foldersAreNoFiles() {
        OutputFiles files = new OutputFiles(true);
        assertThatExceptionOfType(CannotWrite.class).isThrownBy(() -> files.write(folder, "x"));
        assertThatExceptionOfType(CannotWrite.class)
                .isThrownBy(() -> files.write(folder.resolve("no/such/place.csv"), "x"))
                .withMessageContaining("no folder");
    }

    @Test
    void aFullDiskIsNoticed() {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.isWritable(full));
        assertThatExceptionOfType(CannotWrite.class)
                .isThrownBy(() -> new OutputFiles(false).write(full, "x"))
                .withMessageContaining("No space left");
    }
}
