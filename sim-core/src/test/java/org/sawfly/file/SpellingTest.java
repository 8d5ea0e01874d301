package org.sawfly.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpellingTest {
    @Test
    void countsLettersAndSwaps() {
        assertThat(Spelling.distance("boom", "boom")).isZero();
        assertThat(Spelling.distance("bomo", "boom")).isEqualTo(1);
        assertThat(Spelling.distance("boom", "bo")).isEqualTo(2);
        assertThat(Spelling.distance("", "fin")).isEqualTo(3);
    }

    @Test
    void doesNotGuessWildly() {
        assertThat(Spelling.nearest("xyz", List.of("fin", "pod"))).isEmpty();
        assertThat(Spelling.nearest("plovr.yaml", List.of("plover.yaml", "reed.yaml")))
                .isEqualTo("plover.yaml");
    }
}
