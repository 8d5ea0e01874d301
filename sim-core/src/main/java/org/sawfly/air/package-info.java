/**
 * The atmosphere, the wind and the standard constants. Start at {@code Standard}. Heights in m above sea level unless a
 * doc tag says above ground; SI throughout.
 */
package org.sawfly.air;
