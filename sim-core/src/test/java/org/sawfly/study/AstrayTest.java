package org.sawfly.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.sawfly.flight.Course;

class AstrayTest {
    private static final double TINY = 1e-12;

    private static Astray.Seen seen(double rolled, double heading, double drift) {
        return new Astray.Seen(rolled, new Course(0, 0, 0, heading, drift));
    }

    /** The throw itself goes left; the error sends it to the right of that, its opposite further left. */
    @Test
    void what_the_throw_itself_does_is_not_counted() {
        Astray astray = Astray.of(BenchError.FIN_SKEW, 0.01, seen(-0.1, -0.3, -4), seen(-0.2, -0.5, -10));
        assertThat(astray.rolled()).isCloseTo(0.05, within(TINY));
        assertThat(astray.heading()).isCloseTo(0.1, within(TINY));
        assertThat(astray.drift()).isCloseTo(3, within(TINY));
        assertThat(astray.amount()).isEqualTo(0.01);
    }

    @Test
    void headings_are_taken_the_short_way_round() {
        Astray astray = Astray.of(BenchError.FIN_SKEW, 0.01, seen(0, -3.1, 0), seen(0, 3.1, 0));
        assertThat(astray.heading()).isCloseTo(Math.PI - 3.1, within(TINY));
    }

    @Test
    void a_flight_without_a_top_has_no_answer() {
        Astray astray = Astray.of(BenchError.FIN_SKEW, 0.01, seen(0, 0, 1), Astray.Seen.NONE);
        assertThat(astray.drift()).isNaN();
    }
}
