package org.sawfly.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Tailplane;

/** Millimetres at the root trailing edge and angles: what a ruler shows. */
class DeflectionsTest {
    @Test
    void aFlapTurnsAboutItsHinge() {
        double chord = Deflections.of(Demo.GLIDER).elevatorChord();
        assertThat(chord).as("40 % of 72 mm").isCloseTo(0.0288, within(1e-12));
        assertThat(Deflections.deflection(Math.toRadians(30), chord)).isCloseTo(0.0144, within(1e-12));
        assertThat(Math.toDegrees(Deflections.angle(0.0144, chord))).isCloseTo(30, within(1e-9));
        assertThat(Deflections.angle(-0.001, chord)).isEqualTo(-Deflections.angle(0.001, chord));
    }

    /** The trailing edge of a tail that turns as a whole is only three quarters of the chord behind its pivot. */
    @Test
    void aWholeTailTurnsAboutItsQuarter() {
        Tailplane t = Demo.GLIDER.tailplane();
        Tailplane whole = new Tailplane(t.mass(), t.planform(), t.x(), t.z(), t.decalage(), t.section(), 1);
        Glider glider = Demo.GLIDER.withTails(whole, Demo.GLIDER.fin());
        double chord = Deflections.of(glider).elevatorChord();
        assertThat(chord).isCloseTo(0.75 * 0.072, within(1e-12));
        assertThat(Deflections.of(glider).rudderChord()).isCloseTo(0.45 * 0.072, within(1e-12));
    }
}
