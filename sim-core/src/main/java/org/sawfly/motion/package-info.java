/**
 * Rigid-body motion: state layout, right-hand side, axes that may be locked, integrators, events and trim. Start at
 * {@code RigidBody}. Body axes x forward, y right, z down; earth axes north, east, down; SI and radians.
 */
package org.sawfly.motion;
