package org.sawfly.math;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class InertiaTest {
    /** Angular momentum of a body is the sum over its points of m r x (omega x r); its products are sums of m x y and so on. */
    @Test
    void angularMomentumIsThatOfThePoints() {
        Random random = new Random(4);
        for (int body = 0; body < 20; body++) {
            Inertia inertia = Inertia.ZERO;
            Vec3 omega = vector(random);
            Vec3 expected = Vec3.ZERO;
            double product = 0;
            for (int i = 0; i < 5; i++) {
                double m = random.nextDouble();
                Vec3 r = vector(random);
                inertia = inertia.plus(Inertia.ofPoint(m, r));
                expected = expected.plus(r.cross(omega.cross(r)).times(m));
                product += m * r.x() * r.z();
            }
            assertThat(inertia.times(omega).minus(expected).norm())
                    .as("body %d of seed 4", body)
                    .isCloseTo(0, within(1e-14));
            assertThat(inertia.ixz()).isCloseTo(product, within(1e-15));
        }
    }

    private static Vec3 vector(Random random) {
        return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    }
}
