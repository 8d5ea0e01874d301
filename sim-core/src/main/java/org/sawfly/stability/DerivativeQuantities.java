package org.sawfly.stability;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/** The derivatives, each with what it means. */
public final class DerivativeQuantities {
    /** All of them, in the order in which they are shown. */
    public static final List<Quantity<Derivatives>> ALL = List.of(
            of("lift_by_angle", "lift for more angle of attack", d -> d.pitch().liftByAngle()),
            of("drag_by_angle", "drag for more angle of attack", d -> d.pitch().dragByAngle()),
            of(
                    "pitch_by_angle",
                    "nose up for more angle of attack (below 0: comes back)",
                    d -> d.pitch().momentByAngle()),
            of("lift_by_pitching", "lift while the nose goes up", d -> d.pitch().liftByRate()),
            of(
                    "pitch_by_pitching",
                    "nose up while it goes up (below 0: brakes)",
                    d -> d.pitch().momentByRate()),
            of(
                    "pitch_by_angle_rate",
                    "the same from downwash that comes late to the tail",
                    d -> d.pitch().momentByAngleRate()),
            of("lift_by_elevator", "lift for elevator down", d -> d.pitch().liftByElevator()),
            of(
                    "pitch_by_elevator",
                    "nose up for elevator down (below 0: it works)",
                    d -> d.pitch().momentByElevator()),
            of(
                    "pitch_by_speed",
                    "nose up for more speed (below 0: tucks; the boom bends)",
                    d -> d.pitch().momentBySpeed()),
            of(
                    "side_by_slip",
                    "push to the right in wind from the right",
                    d -> d.sideslip().force()),
            of(
                    "roll_by_slip",
                    "rolls right in wind from the right (below 0: lifts that wing)",
                    d -> d.sideslip().roll()),
            of(
                    "yaw_by_slip",
                    "nose right in wind from the right (above 0: into the wind)",
                    d -> d.sideslip().yaw()),
            of(
                    "side_by_rolling",
                    "push to the right while rolling right",
                    d -> d.rollRate().force()),
            of(
                    "roll_by_rolling",
                    "rolls right while rolling right (below 0: brakes)",
                    d -> d.rollRate().roll()),
            of(
                    "yaw_by_rolling",
                    "nose right while rolling right (below 0: adverse)",
                    d -> d.rollRate().yaw()),
            of(
                    "side_by_yawing",
                    "push to the right while the nose goes right",
                    d -> d.yawRate().force()),
            of(
                    "roll_by_yawing",
                    "rolls right while the nose goes right",
                    d -> d.yawRate().roll()),
            of(
                    "yaw_by_yawing",
                    "nose right while it goes right (below 0: brakes)",
                    d -> d.yawRate().yaw()),
            of(
                    "roll_by_aileron",
                    "rolls right for aileron right",
                    d -> d.aileron().roll()),
            of(
                    "yaw_by_aileron",
                    "nose right for aileron right (below 0: adverse)",
                    d -> d.aileron().yaw()),
            of(
                    "side_by_rudder",
                    "push to the right for rudder left",
                    d -> d.rudder().force()),
            of("roll_by_rudder", "rolls right for rudder left", d -> d.rudder().roll()),
            of(
                    "yaw_by_rudder",
                    "nose right for rudder left (below 0: it works)",
                    d -> d.rudder().yaw()));

    private DerivativeQuantities() {}

    private static Quantity<Derivatives> of(String key, String words, ToDoubleFunction<Derivatives> getter) {
        return new Quantity<>(key, words, Unit.NUMBER, 4, getter);
    }
}
