package org.sawfly.glider;

/**
 * A change of the airframe, made on the parts and never on the results.
 *
 * <p>Whatever is a plain value of the glider file (a part's mass, a chord, a place) is changed by reading the file with
 * that value; the changes here are those that move other things along.
 */
public interface DesignChange {
    /** The glider after the change. */
    Glider apply(Glider before);
}
