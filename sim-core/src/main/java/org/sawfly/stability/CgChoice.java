package org.sawfly.stability;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.glider.CgSetting;
import org.sawfly.glider.DesignException;
import org.sawfly.glider.Glider;

/**
 * A CG one could have, by nose lead alone.
 *
 * @param cg behind the root leading edge [m]
 * @param lead nose lead it takes [kg], NaN when there is not enough to take out
 * @param marginShare margin then, as a share of the mean chord [1]; NaN as well
 */
public record CgChoice(double cg, double lead, double marginShare) {
    /**
     * A choice.
     *
     * @param glider as it is
     * @param cg wanted, behind the root leading edge [m]
     * @param marginShare margin of a glider as a share of its mean chord [1]
     */
    public static CgChoice of(Glider glider, double cg, ToDoubleFunction<Glider> marginShare) {
        try {
            Glider there = new CgSetting(-cg, List.of(CgSetting.Means.NOSE_LEAD)).apply(glider);
            return new CgChoice(cg, there.noseLead().mass(), marginShare.applyAsDouble(there));
        } catch (DesignException e) {
            return new CgChoice(cg, Double.NaN, Double.NaN);
        }
    }
}
