package org.sawfly.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.sawfly.glider.TubeSection;

class OpenRingTest {
    private static final TubeSection TUBE = TubeSection.ofWall(0.012, 0.00035);

    @Test
    void no_slot_leaves_the_plain_tube() {
        double[] stresses = new OpenRing(TUBE, 1e-9).stresses(3, 4);
        assertThat(stresses[0]).isCloseTo(TUBE.bendingStress(5), withinPercentage(0.01));
        assertThat(stresses[1]).isCloseTo(TUBE.bendingStress(5), withinPercentage(0.01));
    }

    /** Forces on the fibres add up to no pull and to the moment: integrated over the ring in small pieces. */
    @Test
    void stresses_carry_the_moment_and_no_pull() {
        double width = 0.005;
        double r = TUBE.middleRadius();
        double phi = 0.5 * width / r;
        double area = 0;
        double first = 0;
        double second = 0;
        int n = 200000;
        for (int i = 0; i < n; i++) {
            double angle = phi + 2 * (Math.PI - phi) * (i + 0.5) / n;
            double da = r * TUBE.wall() * 2 * (Math.PI - phi) / n;
            area += da;
            first += da * r * Math.cos(angle);
            second += da * r * r * Math.cos(angle) * Math.cos(angle);
        }
        double centre = first / area;
        double inertia = second - area * centre * centre;
        // towards the slot: the edges of the slot are pressed, the far side is pulled
        double[] stresses = new OpenRing(TUBE, width).stresses(2, 0);
        double outward = Math.PI * r * r * TUBE.wall() / TUBE.modulus();
        assertThat(stresses[0]).isCloseTo(outward * 2 * (r + centre) / inertia, withinPercentage(0.01));
        assertThat(stresses[1]).isCloseTo(outward * 2 * (r * Math.cos(phi) - centre) / inertia, withinPercentage(0.01));
    }

    @Test
    void a_slot_across_the_bending_hurts_less_than_one_on_the_pressed_side() {
        OpenRing ring = new OpenRing(TUBE, 0.004);
        double plain = TUBE.bendingStress(2);
        double[] onSide = ring.stresses(2, 0);
        double[] onEdge = ring.stresses(0, 2);
        assertThat(Math.max(onSide[0], onSide[1])).isGreaterThan(1.1 * plain);
        assertThat(onEdge[0]).isCloseTo(onEdge[1], within(1e-3 * plain));
        assertThat(onEdge[0]).isBetween(plain * 0.999, Math.max(onSide[0], onSide[1]));
    }
}
