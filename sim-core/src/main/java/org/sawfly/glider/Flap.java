package org.sawfly.glider;

/**
 * A plain flap along the trailing edge.
 *
 * @param chordFraction flap chord as a fraction of the local chord [1]; 1 means the whole surface turns
 * @param from inner end, distance from the root [m]
 * @param to outer end, distance from the root [m]
 */
public record Flap(double chordFraction, double from, double to) {}
