package org.sawfly.study;

import java.util.List;
import org.sawfly.flight.Scenario;

/** Makes scenarios that differ in some settings; the same settings give the same scenario, from any thread. */
@FunctionalInterface
public interface Scenarios {
    /**
     * The scenario with these settings, each replacing what was there, the last one winning.
     *
     * @throws RuntimeException when a value is not accepted, with the file's own message
     */
    Scenario with(List<Setting> settings);
}
