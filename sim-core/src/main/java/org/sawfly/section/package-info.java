/**
 * What a wing section does: lift, drag and moment over angle, Reynolds number and flap angle, for the whole circle, from
 * a table or from an estimate. Start at {@link org.sawfly.section.Section}. Angles in radians from the chord line, nose up
 * positive; moment about the quarter chord.
 */
package org.sawfly.section;
