package org.sawfly.study;

/**
 * A setting to be tuned.
 *
 * @param path as in {@link Setting}
 * @param words what it is
 * @param start in the unit of the key, as the rest
 * @param low least value
 * @param high greatest value
 */
public record Knob(String path, String words, double start, double low, double high) {
    /** Checks the order. */
    public Knob {
        if (!(low < high) || !(start >= low && start <= high)) {
            throw new IllegalArgumentException(path + ": " + start + " is not between " + low + " and " + high);
        }
    }
}
