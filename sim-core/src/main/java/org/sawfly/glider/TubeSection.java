package org.sawfly.glider;

/**
 * The cross-section of a round tube: a ring, exactly, not as a thin wall.
 *
 * <p>With outer radius R and inner radius r: {@code A = pi (R^2 - r^2)}, {@code I = pi (R^4 - r^4)/4}, {@code Z = I/R}; a
 * bending moment M stresses the outermost fibre by {@code M/Z}, a force V across by at most
 * {@code (4 V/3 A)(R^2 + R r + r^2)/(R^2 + r^2)}, at the neutral axis; for a thin wall 2 V/A (Timoshenko, Strength of
 * Materials, part I, 3rd ed. 1955, chapters on stresses in beams; Young and Budynas, Roark's Formulas for Stress and
 * Strain, 7th ed. 2002, table A.1).
 *
 * @param outer diameter [m]
 * @param inner diameter [m]; 0 is a rod
 */
public record TubeSection(double outer, double inner) {
    public TubeSection {
        if (!(outer > 0 && inner >= 0 && inner < outer) || Double.isInfinite(outer)) {
            throw new IllegalArgumentException(
                    "a tube needs an outer diameter above its inner one and that not below 0," + " got " + outer
                            + " m and " + inner + " m");
        }
    }

    /** A tube of an outer diameter and a wall [m]; a wall of half the diameter or more is a rod. */
    public static TubeSection ofWall(double outer, double wall) {
        return new TubeSection(outer, Math.max(0, outer - 2 * wall));
    }

    /** Thickness of the wall [m]. */
    public double wall() {
        return 0.5 * (outer - inner);
    }

    /** Radius of the middle of the wall [m]. */
    public double middleRadius() {
        return 0.25 * (outer + inner);
    }

    /** Area of the ring [m2]. */
    public double area() {
        return 0.25 * Math.PI * (outer * outer - inner * inner);
    }

    /** Second moment of area I about a diameter [m4]. */
    public double secondMoment() {
        double o2 = outer * outer;
        double i2 = inner * inner;
        return Math.PI / 64 * (o2 - i2) * (o2 + i2);
    }

    /** Section modulus Z = I/R [m3]. */
    public double modulus() {
        return 2 * secondMoment() / outer;
    }

    /** Stress of the outermost fibre [Pa] under a bending moment [N m]; tension positive on the stretched side. */
    public double bendingStress(double moment) {
        return moment / modulus();
    }

    /** Greatest shear stress [Pa] under a force across [N]. */
    public double shearStress(double force) {
        double o2 = outer * outer;
        double i2 = inner * inner;
        return 4 * force / (3 * area()) * (o2 + outer * inner + i2) / (o2 + i2);
    }
}
