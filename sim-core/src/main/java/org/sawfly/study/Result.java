package org.sawfly.study;

import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.GlidePolar;
import org.sawfly.flight.Outcome;
import org.sawfly.stability.Margins;
import org.sawfly.stability.Rebalanced;
import org.sawfly.stability.TailVolumes;

/**
 * Everything one scenario gives.
 *
 * @param plan the flight as flown; its craft is the rebalanced glider, trimmed
 * @param rebalanced what was moved, and the glider afterwards
 * @param margins neutral point and margins
 * @param volumes tail volumes
 * @param outcome of the launch
 * @param polar sink over speed for each setting
 */
public record Result(
        FlightPlan plan,
        Rebalanced rebalanced,
        Margins margins,
        TailVolumes volumes,
        Outcome outcome,
        GlidePolar polar) {}
