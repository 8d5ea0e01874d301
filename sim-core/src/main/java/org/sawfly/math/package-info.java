/**
 * Vectors, quaternions, matrices, smooth tables and roots. Nothing here knows about gliders. Start at {@link
 * org.sawfly.math.CubicAxis}, on which the smooth tables stand. What the flight loop calls works on primitive fields and
 * arrays and allocates nothing.
 */
package org.sawfly.math;
