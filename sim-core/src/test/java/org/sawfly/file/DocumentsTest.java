package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DocumentsTest {
    @TempDir
    Path folder;

    private final Problems problems = new Problems();
    private final Documents documents = new Documents(problems);

    @BeforeEach
    void writeFiles() throws IOException {
        Files.writeString(folder.resolve("plover.yaml"), "glider: plover\n");
        Files.writeString(folder.resolve("club.yaml"), "format: 1\nlaunch: club\n");
    }

    @Test
    void knowsAFileByItsFirstKey() {
        assertThat(documents.any(folder.resolve("plover.yaml")).kind()).isEqualTo(Documents.Kind.GLIDER);
        assertThat(problems.all()).isEmpty();
        assertThat(documents.any(folder.resolve("club.yaml")).kind()).isEqualTo(Documents.Kind.LAUNCH);
        assertThat(problems.all()).hasSize(1);
        assertThat(problems.all().get(0).toString()).contains("club.yaml:2:1: launch: must be the first key");
    }

    @Test
    void readsAFileOnce() {
        assertThat(documents.any(folder.resolve("plover.yaml")))
                .isSameAs(documents.any(folder.resolve("x/../plover.yaml")));
    }

    @Test
    void namesTheNeighbourThatWasMeant() {
        assertThat(documents.any(folder.resolve("plovr.yaml"))).isNull();
        assertThat(documents.any(folder.resolve("Plover"))).isNull();
        assertThat(problems.all()).allSatisfy(p -> {
            assertThat(p.what()).startsWith("there is no file");
            assertThat(p.maybe()).endsWith("plover.yaml");
        });
    }

    @Test
    void refusesAnotherKindOfFileAndFolders() {
        assertThat(documents.of(Documents.Kind.STUDY, folder.resolve("plover.yaml")))
                .isNull();
        assertThat(documents.any(folder)).isNull();
        assertThat(problems.all())
                .extracting(Problem::what)
                .satisfiesExactlyInAnyOrder(
                        first -> assertThat(first)
                                .startsWith("a study file is needed here")
                                .endsWith("is a glider file"),
                        second -> assertThat(second).endsWith("is a folder, not a file"));
    }

    @Test
    void resolvesRelativeToTheReferringFile() {
        assertThat(documents.resolved(folder.resolve("sub/study.yaml"), "../plover.yaml", Place.whole("x"), ""))
                .isEqualTo(folder.resolve("plover.yaml"));
        assertThat(documents.resolved(folder.resolve("s.yaml"), "a\0b", Place.whole("x"), ""))
                .isNull();
    }
}
