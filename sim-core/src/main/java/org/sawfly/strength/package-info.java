/**
 * What the boom has to bear and what it bears: stresses in a tube, what a hole does to them, when a thin wall gives in.
 * Start at {@link org.sawfly.strength.BoomStrength}. SI units. All results are estimates from closed forms and beam theory;
 * fatigue, hidden cracks and the quality of glue are not looked at.
 */
package org.sawfly.strength;
