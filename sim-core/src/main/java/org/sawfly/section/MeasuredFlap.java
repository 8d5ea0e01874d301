package org.sawfly.section;

/** What a plain flap really does at the Reynolds numbers of models, as a share of thin-aerofoil theory. */
public final class MeasuredFlap {
    private MeasuredFlap() {}

    /** Share of theory at a Reynolds number of the whole chord [1], the one that the estimate of sections uses. */
    public static double share(double reynolds) {
        double l = Math.log(Math.max(reynolds, 1) / SectionPolar.REFERENCE_RE);
        return SectionPolar.flapShare(Math.min(SectionPolar.HIGHEST, Math.max(SectionPolar.LOWEST, l)));
    }
}
