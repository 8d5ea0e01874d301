package org.sawfly.glider;

import org.sawfly.math.Vec3;

/**
 * What a splice or a wrap is made of.
 *
 * @param fit inside or outside
 * @param length along the boom [m]
 * @param wall thickness [m]
 * @param density [kg/m3]; 0 for a massless one
 * @param modulus along the boom [Pa]; infinite for a rigid one
 * @param strength along the boom [Pa]
 */
public record SleeveStock(
        BoomSleeve.Fit fit, double length, double wall, double density, double modulus, double strength) {
    public SleeveStock {
        Check.notNegative(length, "the length of the sleeve [m]");
        Check.positive(wall, "the wall of the sleeve [m]");
        Check.notNegative(density, "the density of the sleeve [kg/m3]");
    }

    /** The glider with this sleeve, its middle at x; its mass with the glue is a part of its own. */
    Glider put(Glider before, String name, double x, boolean parted, double glue) {
        Boom boom = before.boom();
        double front = Math.min(boom.frontX(), x + 0.5 * length);
        double end = Math.max(boom.endX(), x - 0.5 * length);
        BoomSleeve sleeve = new BoomSleeve(fit, front, end, parted ? x : Double.NaN, wall, modulus, strength);
        String free = name;
        for (int i = 2;
                boom.build().sleeves().containsKey(free) || before.parts().containsKey(free);
                i++) {
            free = name + " " + i;
        }
        double middle = 0.5 * (front + end);
        double mass = glue
                + density
                        * (front - end)
                        * BoomTube.of(boom).section(sleeve, middle).area();
        Glider after = before.withBoom((sleeve.length() == 0 ? boom : known(boom)).withSleeve(free, sleeve));
        return mass == 0 ? after : after.withPart(free, Part.fixed(mass, new Vec3(middle, 0, boom.z())));
    }

    /** The tube as stiff as it is: its bend test was made without what is added now. */
    private static Boom known(Boom boom) {
        return new Boom(
                boom.mass(),
                boom.frontX(),
                boom.endX(),
                boom.z(),
                boom.frontDiameter(),
                boom.endDiameter(),
                new BoomStiffness.OfMaterial(BoomTube.of(boom).specificModulus()),
                boom.holes(),
                boom.build());
    }
}
