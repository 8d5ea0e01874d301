package org.sawfly.strength;

/**
 * How much more one spot of the boom bears than the worst load case asks of it, by this estimate.
 *
 * @param x where, build axes [m]
 * @param name of the hole, slot, sleeve or joint; empty along the plain tube
 * @param mode how it would give way
 * @param worst the case that asks most of it
 * @param asked stress [Pa], or for {@link Mode#WALL} bending moment [N m], in the worst case
 * @param borne the same that it bears
 */
public record Reserve(double x, String name, Mode mode, LoadCase worst, double asked, double borne) {
    /** Bears so many times what is asked [1]; infinite where nothing is asked. */
    public double factor() {
        return asked == 0 ? Double.POSITIVE_INFINITY : borne / asked;
    }

    /** How a spot would give way. */
    public enum Mode {
        /** Fibre of the plain tube tears or crushes. */
        FIBRE("the tube's fibre"),
        /** The same at the edge of a hole. */
        HOLE("the edge of the hole"),
        /** The same beside a slot or at its ends. */
        SLOT("the slot"),
        /** The same where a sleeve ends and the stiffness steps. */
        STEP("the end of the sleeve"),
        /** Fibre of a sleeve. */
        SLEEVE("the sleeve"),
        /** Glue between sleeve and tube. */
        GLUE("the glue of the splice"),
        /** Shear of the tube's wall. */
        SHEAR("shear of the wall"),
        /** The thin wall goes oval and folds. */
        WALL("the thin wall folding"),
        /** Glue or screws under a tail. */
        MOUNT("the joint under the tail");

        private final String words;

        Mode(String words) {
            this.words = words;
        }

        /** As a builder says it. */
        public String words() {
            return words;
        }
    }
}
