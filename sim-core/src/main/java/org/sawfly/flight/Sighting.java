package org.sawfly.flight;

import org.sawfly.glider.Glider;

/**
 * What the thrower's usual height and first swing were seen with. The throw is worked out from it once and kept, whatever
 * is changed afterwards in the glider, the preset, the climb or the air.
 *
 * @param glider
 * @param launch of those throws, in calm air
 */
public record Sighting(Glider glider, Launch launch) {
    /** With a launch as it stands in its file: usual heights are those of calm air. */
    public static Sighting of(Glider glider, Launch launch) {
        return new Sighting(glider, launch.with(launch.weather().calm()));
    }

    /** The same throws described in another way; what is in doubt about a throw was so then too. */
    public Sighting with(Thrower thrower, LaunchDoubts doubts) {
        return new Sighting(glider, launch.with(thrower).with(doubts));
    }
}
