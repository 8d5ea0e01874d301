package org.sawfly.section;

/**
 * A section estimated from its shape, for Reynolds numbers 1e4 to 1e6 (held smoothly beyond) and any angle: zero-lift
 * angle, moment and flap from thin-aerofoil theory, lost lift, drag and stall from a correlation fitted to wind-tunnel
 * measurements, the rest of the circle from the separated plate. Every part is a smooth function, and parts are joined
 * by smooth weights, so there is no angle at which a formula takes over.
 *
 * <p>Errors against the measurements stand in theory/sections.md. The estimate computes about ten exponentials a call:
 * make a {@link SectionTable} of it for flying.
 *
 * @param shape thickness, camber and flap of the section
 * @param stallDelay added to the angles of stall on both sides [rad]; 0 for a wing, a few degrees for a tail of low aspect
 *     ratio, which holds on longer than its section alone
 */
public record SectionEstimate(SectionShape shape, double stallDelay) implements Section {
    public SectionEstimate {
        if (!Double.isFinite(stallDelay)) {
            throw new IllegalArgumentException("stallDelay must be finite, got " + stallDelay);
        }
    }

    /** The section as it is in two-dimensional flow. */
    public SectionEstimate(SectionShape shape) {
        this(shape, 0);
    }

    @Override
    public void at(double alpha, double reynolds, double flap, double[] out) {
        polar(reynolds, flap).at(alpha, out);
    }

    @Override
    public Section prepared(double reynolds, double flap) {
        SectionPolar polar = polar(reynolds, flap);
        return (alpha, sameReynolds, sameFlap, out) -> polar.at(alpha, out);
    }

    /** The estimate on the usual grid, ready for flying. */
    public SectionTable table() {
        return SectionTable.of(this, SectionGrid.usual(shape.flapChord() > 0));
    }

    private SectionPolar polar(double reynolds, double flap) {
        return new SectionPolar(SectionCorrelation.FITTED, shape, stallDelay, reynolds, flap);
    }
}
