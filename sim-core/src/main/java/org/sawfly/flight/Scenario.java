package org.sawfly.flight;

import org.sawfly.aero.Corrections;
import org.sawfly.glider.Glider;
import org.sawfly.glider.RebalanceRule;
import org.sawfly.motion.Axes;

/**
 * All that one answer needs: a glider with its changes done, how it is launched and glided, and the doubts about the model.
 *
 * @param glider the glider to fly, design changes done, NOT yet rebalanced
 * @param today the same glider before any change: rebalancing and the thrower refer to it
 * @param sighting what the thrower's usual height was seen with
 * @param rebalance what is kept after the change and what is moved for it
 * @param launch
 * @param settings glide settings
 * @param presetRule
 * @param corrections
 * @param flying how it is flown
 */
public record Scenario(
        Glider glider,
        Glider today,
        Sighting sighting,
        RebalanceRule rebalance,
        Launch launch,
        GlideSettings settings,
        PresetRule presetRule,
        Corrections corrections,
        Flying flying) {
    /** Flown by the fast model, with a glider whose usual height was seen at this very launch, in calm air. */
    public Scenario(
            Glider glider,
            Glider today,
            Glider calibratedWith,
            RebalanceRule rebalance,
            Launch launch,
            GlideSettings settings,
            PresetRule presetRule,
            Corrections corrections,
            Axes axes) {
        this(
                glider,
                today,
                Sighting.of(calibratedWith, launch),
                rebalance,
                launch,
                settings,
                presetRule,
                corrections,
                Flying.fast(axes));
    }

    /** The glider with which the thrower's usual height was seen. */
    public Glider calibratedWith() {
        return sighting.glider();
    }

    /** Freedoms of motion. */
    public Axes axes() {
        return flying.axes();
    }

    /** The same scenario flown in another way. */
    public Scenario flown(Flying other) {
        return new Scenario(glider, today, sighting, rebalance, launch, settings, presetRule, corrections, other);
    }
}
