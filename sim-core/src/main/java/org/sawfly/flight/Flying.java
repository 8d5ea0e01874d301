package org.sawfly.flight;

import org.sawfly.aero.ModelChoice;
import org.sawfly.motion.Axes;

/**
 * How a scenario is flown.
 *
 * @param axes freedoms of motion
 * @param model of the air forces; the whole motion after release is only for strips
 * @param steering which controls the pilot moves
 * @param push when the pilot pushes over
 */
public record Flying(Axes axes, ModelChoice model, Steering steering, PushRule push) {
    /** By the fast model, with all controls. */
    public static Flying fast(Axes axes) {
        return new Flying(axes, ModelChoice.TAIL_VOLUME, Steering.FULL, PushRule.SAME);
    }

    /** The same by another model. */
    public Flying by(ModelChoice other) {
        return new Flying(axes, other, steering, push);
    }
}
