package org.sawfly.glider;

import java.util.List;

/**
 * Outline of one half of a surface, straight between stations, measured in its own plane.
 *
 * @param stations from root to tip, at least two, {@code out} growing from 0
 */
public record Planform(List<Station> stations) {
    public Planform {
        stations = List.copyOf(stations);
    }

    /** Area of this half [m2]. */
    public double area() {
        double sum = 0;
        for (int i = 1; i < stations.size(); i++) {
            Station a = stations.get(i - 1);
            Station b = stations.get(i);
            sum += 0.5 * (a.chord() + b.chord()) * (b.out() - a.out());
        }
        return sum;
    }

    /** Length of this half from root to tip [m]. */
    public double span() {
        return stations.get(stations.size() - 1).out();
    }
}
