package org.sawfly.motion;

/** Looks on while a flight is integrated: extremes, log, ledger. */
@FunctionalInterface
public interface StepWatcher {
    /** Called once for each accepted step, in order; the last one ends where the run ends. */
    void watch(Step step);
}
