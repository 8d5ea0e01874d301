/**
 * What keeps a glider pointing the right way: tail volumes, neutral point, margins, derivatives, modes, and what has to
 * move after a change so that balance or margin is kept.
 */
package org.sawfly.stability;
