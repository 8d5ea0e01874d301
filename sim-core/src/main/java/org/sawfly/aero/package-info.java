/**
 * Forces and moments of the air on a glider: the vortex system, the models built on it and the bending of the boom.
 * Start at {@code AeroModel}: it is immutable and shared; an evaluator owns the scratch, one a flight. Body axes, SI.
 */
package org.sawfly.aero;
