package org.sawfly.glider;

/** How the bending stiffness of the boom is known. */
public sealed interface BoomStiffness {
    /**
     * From the material alone: EI(x) = (E/rho)(mass per length)(radius)^2/2, the tube taken as thin.
     *
     * @param specificModulus E/rho [N m/kg]
     */
    record OfMaterial(double specificModulus) implements BoomStiffness {
        public OfMaterial {
            Check.positive(specificModulus, "the specific modulus of the boom [N m/kg]");
        }
    }

    /**
     * From a bend test: the boom held at one place, a weight hung at another, the deflection there measured; the law of
     * the material is scaled by one factor until it agrees.
     *
     * @param heldX build axes [m]
     * @param hungX build axes [m]
     * @param force hung weight [N]
     * @param deflection at the weight [m]
     */
    record OfBendTest(double heldX, double hungX, double force, double deflection) implements BoomStiffness {
        public OfBendTest {
            Check.finite(heldX, "the place where the boom is held [m]");
            Check.finite(hungX, "the place where the weight hangs [m]");
            Check.positive(force, "the hung weight [N]");
            Check.positive(deflection, "how far the boom moves [m]");
            if (hungX >= heldX) {
                throw new IllegalArgumentException(
                        "the weight of the bend test must hang behind the place it is held at");
            }
        }
    }
}
