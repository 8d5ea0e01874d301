package org.sawfly.flight;

import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.Wing;

/** The mirror image of a glider that is symmetric but for its peg. */
public final class Mirror {
    private Mirror() {}

    public static Glider of(Glider g) {
        Wing w = g.wing();
        Hand other = w.peg() == Hand.RIGHT ? Hand.LEFT : Hand.RIGHT;
        Wing wing = new Wing(w.mass(), w.planform(), w.dihedral(), w.root(), w.tip(), w.flaperon(), other);
        return new Glider(
                g.name(), wing, g.tailplane(), g.fin(), g.boom(), g.pod(), g.parts(), g.noseLead(), g.correction());
    }
}
