package org.sawfly.glider;

import java.util.ArrayList;
import java.util.List;
import org.sawfly.math.Quadrature;

/**
 * Outline of one half of a surface, straight between stations, measured in its own plane: y out from the root, c(y) the
 * chord, b(y) the leading edge behind that of the root. All integrals are exact for straight pieces.
 *
 * <p>Mean aerodynamic chord {@code int c^2 dy/S} with its leading edge at {@code int c b dy/S} (the usual definition,
 * Etkin and Reid, Dynamics of Flight, 3rd ed. 1996, appendix C.1).
 *
 * @param stations from root to tip, at least two, {@code out} growing from 0
 */
public record Planform(List<Station> stations) {
    /** Checks the order of the stations. */
    public Planform {
        stations = List.copyOf(stations);
        if (stations.size() < 2) {
            throw new IllegalArgumentException("an outline needs two stations at least, root and tip");
        }
        if (stations.get(0).out() != 0) {
            throw new IllegalArgumentException("the first station must be the root, 0 out from the middle");
        }
        for (int i = 1; i < stations.size(); i++) {
            if (stations.get(i).out() <= stations.get(i - 1).out()) {
                throw new IllegalArgumentException("stations must go outwards from root to tip: station " + (i + 1)
                        + " does not lie outside station " + i);
            }
        }
    }

    /** Something to be integrated along the span. */
    @FunctionalInterface
    interface Along {
        /** Value at distance y from the root [m], with chord c and leading edge b behind the root's [m]. */
        double at(double y, double c, double b);
    }

    /** Area of this half [m2]. */
    public double area() {
        return integral((y, c, b) -> c);
    }

    /** Length of this half from root to tip [m]. */
    public double span() {
        return stations.get(stations.size() - 1).out();
    }

    /** Aspect ratio of the surface made of this half and its mirror image [1]. */
    public double aspectRatio() {
        return 2 * span() * span() / area();
    }

    /** Mean aerodynamic chord [m]. */
    public double meanChord() {
        return integral((y, c, b) -> c * c) / area();
    }

    /** Leading edge of the mean aerodynamic chord behind that of the root [m]. */
    public double meanChordBack() {
        return integral((y, c, b) -> c * b) / area();
    }

    /** Distance of the mean aerodynamic chord from the root: of the area's centroid [m]. */
    public double meanChordOut() {
        return integral((y, c, b) -> c * y) / area();
    }

    /** Quarter point of the mean aerodynamic chord behind the leading edge of the root [m]. */
    public double quarterPointBack() {
        return meanChordBack() + 0.25 * meanChord();
    }

    /** Chord at a distance from the root [m]; beyond the tip that of the tip. */
    public double chordAt(double out) {
        return between(out, true);
    }

    /** Leading edge behind that of the root at a distance from it [m]; beyond the tip that of the tip. */
    public double backAt(double out) {
        return between(out, false);
    }

    /** The same shape with so many times the area. */
    public Planform scaled(double areaFactor) {
        Check.positive(areaFactor, "the factor on the area");
        double k = Math.sqrt(areaFactor);
        List<Station> scaled = new ArrayList<>();
        for (Station s : stations) {
            scaled.add(new Station(k * s.out(), k * s.chord(), k * s.back()));
        }
        return new Planform(scaled);
    }

    /** Integral over the span of this half; exact where the integrand is a polynomial of degree five in y at most. */
    double integral(Along f) {
        double sum = 0;
        for (int i = 1; i < stations.size(); i++) {
            Station a = stations.get(i - 1);
            Station b = stations.get(i);
            double width = b.out() - a.out();
            sum += Quadrature.integral(
                    y -> {
                        double t = (y - a.out()) / width;
                        return f.at(y, a.chord() + t * (b.chord() - a.chord()), a.back() + t * (b.back() - a.back()));
                    },
                    a.out(),
                    b.out());
        }
        return sum;
    }

    private double between(double out, boolean chord) {
        int i = 1;
        while (i < stations.size() - 1 && stations.get(i).out() < out) {
            i++;
        }
        Station a = stations.get(i - 1);
        Station b = stations.get(i);
        double t = Math.min(1, Math.max(0, (out - a.out()) / (b.out() - a.out())));
        return chord ? a.chord() + t * (b.chord() - a.chord()) : a.back() + t * (b.back() - a.back());
    }
}
