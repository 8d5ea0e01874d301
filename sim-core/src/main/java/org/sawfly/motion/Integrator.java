package org.sawfly.motion;

import java.util.List;

/**
 * Carries a state through time. One a flight, not shared between threads.
 *
 * <p>A run ends at the first root of any of its stop events, located on the dense output. An event counts when its function
 * changes sign over a step, seen at the ends of the steps; it is passed when the run ends, so that the next run may start
 * there with the same event.
 */
public interface Integrator {
    /**
     * Integrates.
     *
     * @param equations what to integrate
     * @param start time at which [s]
     * @param state at the start; holds the state at the stop afterwards
     * @param end time to go to at most [s]
     * @param stops events that end the run earlier
     * @param watchers called for every accepted step, in list order
     * @return when and why it ended
     * @throws IntegrationException when it cannot be done within the bounds
     */
    Stop run(
            Equations equations,
            double start,
            double[] state,
            double end,
            List<StopEvent> stops,
            List<StepWatcher> watchers);

    /** How often the equations were evaluated by all runs so far. */
    int evaluations();
}
