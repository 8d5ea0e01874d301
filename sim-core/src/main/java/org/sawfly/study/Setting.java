package org.sawfly.study;

import org.sawfly.quantity.Numbers;

/**
 * One changed value, said as in a file: the one way in which sweeps, versions, draws, bench errors, tuning and
 * calibration change anything, so that bounds and messages are the file's.
 *
 * @param path  keys joined by points, {@code boom.cut_mm}
 * @param value as it would be written in the file, in the unit of the key
 */
public record Setting(String path, String value) {
    /** A number in the unit of the key. */
    public static Setting of(String path, double value) {
        return new Setting(path, Numbers.machine(value));
    }

    @Override
    public String toString() {
        return path + "=" + value;
    }
}
