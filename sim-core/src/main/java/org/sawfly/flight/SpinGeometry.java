package org.sawfly.flight;

import org.sawfly.glider.Station;
import org.sawfly.glider.Wing;

/**
 * Where the CG lies from the peg, which sits at the middle of the tip chord.
 *
 * @param aft of the peg, negative if the CG is ahead of it [m]
 * @param inboard of the peg [m]
 */
record SpinGeometry(double aft, double inboard) {
    static SpinGeometry of(Craft craft) {
        Wing wing = craft.glider().wing();
        Station tip = wing.planform().stations().get(wing.planform().stations().size() - 1);
        double pegX = -(tip.back() + 0.5 * tip.chord());
        return new SpinGeometry(pegX - craft.mass().cg().x(), wing.planform().span() * Math.cos(wing.dihedral()));
    }

    /** Distance of the CG from the peg [m]. */
    double pegToCg() {
        return Math.hypot(aft, inboard);
    }
}
