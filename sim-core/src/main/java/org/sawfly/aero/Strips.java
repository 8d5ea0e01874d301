package org.sawfly.aero;

import org.sawfly.aero.Surface.Rib;
import org.sawfly.math.Vec3;

/**
 * A surface cut into strips, each with a bound vortex on the quarter-chord line between its edges and a control section.
 *
 * <p>Spacing: with {@code s = s_middle - (span/2) cos(theta)}, edges at {@code theta = j pi/N} and controls at the middle
 * ANGLE {@code (j + 1/2) pi/N} over the whole span from tip to tip. Sums over such strips converge with the square of
 * their number, those with the control at the middle of the width only with the number itself. An even N puts an edge in
 * the plane of symmetry and makes the halves mirror images: strip i and strip N-1-i.
 *
 * <p>Directions and signs as in {@link Surface}. Immutable.
 */
final class Strips {
    final Surface surface;
    final int count;
    /** Bound vortices run from edge i to edge i + 1, quarter-chord points [m]. */
    final Vec3[] edges;
    /** s of the edges [m]. */
    final double[] edgePlaces;
    /** s of the control sections [m]. */
    final double[] places;
    /** Quarter-chord points of the control sections [m]. */
    final Vec3[] quarters;
    /** Directions of positive lift. */
    final Vec3[] normals;
    /** Chord at the control section [m]. */
    final double[] chords;
    /** Width along s [m]. */
    final double[] widths;
    /** Twist at the control section, towards n positive [rad]. */
    final double[] twists;

    private Strips(Surface surface, double[] edgePlaces, double[] places) {
        this.surface = surface;
        this.count = places.length;
        this.edgePlaces = edgePlaces;
        this.places = places;
        this.edges = new Vec3[count + 1];
        this.quarters = new Vec3[count];
        this.normals = new Vec3[count];
        this.chords = new double[count];
        this.widths = new double[count];
        this.twists = new double[count];
        for (int i = 0; i <= count; i++) {
            edges[i] = quarter(surface.at(edgePlaces[i]));
        }
        for (int i = 0; i < count; i++) {
            Rib rib = surface.at(places[i]);
            quarters[i] = quarter(rib);
            chords[i] = rib.chord();
            twists[i] = rib.twist();
            widths[i] = edgePlaces[i + 1] - edgePlaces[i];
            Vec3 along = edges[i + 1].minus(edges[i]);
            double length = Math.hypot(along.y(), along.z());
            normals[i] = new Vec3(0, along.z() / length, -along.y() / length);
        }
    }

    /** N strips spaced by the cosine over the whole span; N is even on a mirrored surface. */
    static Strips cosine(Surface surface, int n) {
        if (n < 2 || (surface.isMirrored() && n % 2 != 0)) {
            throw new IllegalArgumentException("strips: an even number on a mirrored surface, at least 2; got " + n);
        }
        double[] edges = new double[n + 1];
        double[] controls = new double[n];
        double middle = 0.5 * (surface.from() + surface.to());
        for (int i = 0; i <= n; i++) {
            edges[i] = middle - 0.5 * surface.span() * cosineOf(2 * i, 2 * n);
        }
        for (int i = 0; i < n; i++) {
            controls[i] = middle - 0.5 * surface.span() * cosineOf(2 * i + 1, 2 * n);
        }
        return new Strips(surface, edges, controls);
    }

    /** Strips between given edges, controls at given places, both growing [m]. */
    static Strips between(Surface surface, double[] edges, double[] controls) {
        if (edges.length != controls.length + 1) {
            throw new IllegalArgumentException(edges.length + " edges do not fit " + controls.length + " strips");
        }
        return new Strips(surface, edges.clone(), controls.clone());
    }

    /** cos(pi i/n), odd about the middle to the last bit so that the halves are mirror images. */
    private static double cosineOf(int i, int n) {
        return Math.sin(Math.PI * (n - 2 * i) / (2.0 * n));
    }

    /** Share of each strip's width between s = from and s = to, on a mirrored surface on both halves, 0..1. */
    double[] shares(double from, double to) {
        double[] shares = new double[count];
        for (int i = 0; i < count; i++) {
            double a = edgePlaces[i];
            double b = edgePlaces[i + 1];
            double covered = overlap(a, b, from, to) + (surface.isMirrored() ? overlap(-b, -a, from, to) : 0);
            shares[i] = covered / widths[i];
        }
        return shares;
    }

    private static double overlap(double a, double b, double from, double to) {
        return Math.max(0, Math.min(b, to) - Math.max(a, from));
    }

    private static Vec3 quarter(Rib rib) {
        return rib.leadingEdge().plus(new Vec3(-0.25 * rib.chord(), 0, 0));
    }
}
