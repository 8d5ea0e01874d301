/**
 * The glider as built: parts with their shapes, surfaces, boom tube, mass, balance and inertia, and the changes a builder
 * makes to them. Start at {@code Glider}. Body axes: x forward, y right, z down, origin at the wing's root leading edge.
 */
package org.sawfly.glider;
