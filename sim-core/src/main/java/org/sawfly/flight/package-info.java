/**
 * One throw from the hand to the settled glide: the release, the pilot, the phases, what is logged and where the height
 * went. Start at {@code Flight}. All changing state is made inside one flight and ends with it.
 */
package org.sawfly.flight;
