package org.sawfly.section;

/**
 * Friction of one side of a smooth flat plate without pressure gradient, referred to its area; Reynolds number on its
 * length.
 */
final class FlatPlateFriction {
    private FlatPlateFriction() {}

    /** Laminar: Blasius, "Grenzschichten in Fluessigkeiten mit kleiner Reibung", 1908. */
    static double laminar(double reynolds) {
        return 1.328 / Math.sqrt(reynolds);
    }

    /** Turbulent from the leading edge on: Schlichting, "Boundary-Layer Theory", chapter XXI, Prandtl-Schlichting. */
    static double turbulent(double reynolds) {
        return 0.455 / Math.pow(Math.log10(reynolds), 2.58);
    }

    /**
     * Laminar as far as the transition, turbulent behind it as if it had been so from the leading edge (Prandtl 1921):
     * {@code turbulent(Re) - (x_t/c)(turbulent(Re_t) - laminar(Re_t))}, Re_t at the transition.
     *
     * @param transition place of the transition over the length [1], 0 to 1
     */
    static double mixed(double reynolds, double transition) {
        if (transition <= 0) {
            return turbulent(reynolds);
        }
        double at = reynolds * Math.min(transition, 1);
        return turbulent(reynolds) - Math.min(transition, 1) * (turbulent(at) - laminar(at));
    }
}
