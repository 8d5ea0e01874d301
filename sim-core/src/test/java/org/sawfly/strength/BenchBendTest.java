package org.sawfly.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.sawfly.air.Standard;
import org.sawfly.glider.Boom;
import org.sawfly.glider.BoomCut;
import org.sawfly.glider.BoomTube;
import org.sawfly.glider.Plover;

class BenchBendTest {
    private static final Boom BOOM = Plover.glider().boom();

    @Test
    void the_bend_test_is_foretold_and_two_fifths_of_the_weight_moves_two_fifths() {
        double half = BenchBend.moves(BOOM, -0.168, -0.663, 0.5 * Standard.GRAVITY);
        assertThat(half).isCloseTo(0.0057, within(1e-9));
        assertThat(BenchBend.moves(BOOM, -0.168, -0.663, 0.2 * Standard.GRAVITY))
                .isCloseTo(0.4 * half, within(1e-12));
    }

    @Test
    void a_shorter_boom_moves_less() {
        Boom cut = BoomCut.atRearEnd(0.04, 0).apply(Plover.glider()).boom();
        assertThat(BenchBend.moves(cut, -0.168, -0.623, 5)).isLessThan(0.85 * BenchBend.moves(BOOM, -0.168, -0.663, 5));
    }

    /** Uniform thin tube: {@code T L/GJ}, {@code GJ = 2 (G/E) EI}; tapered, {@code int ds/(1 - k s)^3 = ((1 - k L)^-2 - 1)/2k}. */
    @Test
    void a_couple_twists_it() {
        BoomTube tube = BoomTube.of(BOOM);
        double gj = 2 * BOOM.build().wall().shear() / tube.modulus() * tube.stiffness(BOOM.frontX());
        double k = 0.5 / BOOM.length();
        double expected = 0.1 / gj * (1 / (0.5 * 0.5) - 1) / (2 * k);
        assertThat(BenchBend.twists(BOOM, BOOM.frontX(), BOOM.endX(), 0.1)).isCloseTo(expected, withinPercentage(1e-6));
    }
}
