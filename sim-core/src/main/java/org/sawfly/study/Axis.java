package org.sawfly.study;

import java.util.List;

/**
 * One varied quantity.
 *
 * @param path key path, as in {@link Setting}
 * @param values in the unit of the key, in the order in which they are to come
 */
public record Axis(String path, List<Double> values) {
    public Axis {
        values = List.copyOf(values);
        if (values.isEmpty()) {
            throw new IllegalArgumentException("nothing to vary for " + path);
        }
    }
}
