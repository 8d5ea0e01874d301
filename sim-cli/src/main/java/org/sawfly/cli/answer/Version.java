package org.sawfly.cli.answer;

import java.util.List;
import java.util.Optional;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.study.Answered;
import org.sawfly.study.Setting;
import org.sawfly.study.TryFirst;

/**
 * A changed version beside today's glider.
 *
 * @param label short, for its column
 * @param changes what is changed
 * @param rule what is kept for it
 * @param answered its result, or why there is none
 * @param tryFirst how to get a foretaste of it
 */
public record Version(
        String label, List<Setting> changes, RebalanceRule rule, Answered answered, Optional<TryFirst> tryFirst) {
    boolean cuts() {
        return changes.stream().anyMatch(setting -> setting.path().equals(ChangeWords.CUT));
    }
}
