package org.sawfly.study.log;

/**
 * One launch found in a log.
 *
 * @param release about when it left the hand [s]
 * @param ground height of the log where the glider was held before the throw [m]
 * @param topTime when it stood highest [s]
 * @param top greatest height [m]
 * @param end when the flight ends: back on the ground, the next launch, the last sample [s]
 * @param gap longest time without a sample between a second after release and a second after the top [s]
 */
public record FoundLaunch(double release, double ground, double topTime, double top, double end, double gap) {}
