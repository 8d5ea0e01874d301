/**
 * What an altimeter wrote down: throws are found in it, release speed and drag are fitted to them. Start at {@link
 * org.sawfly.study.log.Calibration}. Times in seconds of the log's own clock, heights in metres above its own zero.
 */
package org.sawfly.study.log;
