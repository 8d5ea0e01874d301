package org.sawfly.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Today's glider beside its versions. */
public final class Compare {
    private Compare() {}

    /**
     * Answers every version, in order.
     *
     * @param bench what the versions share
     * @param scenarios makes their scenarios
     * @param versions settings of each, by name
     */
    public static Map<String, Answered> run(Workbench bench, Scenarios scenarios, Map<String, List<Setting>> versions) {
        Map<String, Answered> answers = new LinkedHashMap<>();
        versions.forEach((name, settings) -> answers.put(name, Answered.of(bench, scenarios, settings)));
        return answers;
    }
}
