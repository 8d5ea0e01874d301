/**
 * The glider as built: parts with their shapes, surfaces, boom tube, mass, balance and inertia, and the changes a builder
 * makes to them. Start at {@code Glider}, then {@code MassProperties.of}. Build axes: origin at the wing's root leading
 * edge, x forward along the wing's root chord, y right, z down [m]; body axes are parallel, at the CG. A file's
 * {@code behind_mm: 69} is x = -0.069 and {@code above_boom_mm: 14} lies 0.014 m above (z less) the boom's axis. Masses kg,
 * inertias kg m2, angles rad.
 */
package org.sawfly.glider;
