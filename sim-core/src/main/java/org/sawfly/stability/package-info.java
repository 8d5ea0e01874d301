/**
 * What keeps a glider pointing the right way: tail volumes, neutral point, margins, derivatives, modes, and what has to
 * move after a change so that balance or margin is kept. Start at {@link org.sawfly.stability.Margins}. Lengths in m behind
 * the wing's root leading edge, unless a doc tag says otherwise.
 */
package org.sawfly.stability;
