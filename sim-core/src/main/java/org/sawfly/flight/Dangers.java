package org.sawfly.flight;

import java.util.List;
import org.sawfly.aero.Motion;
import org.sawfly.motion.Kinematics;
import org.sawfly.motion.RigidBody;
import org.sawfly.motion.StopEvent;

/** What ends a flight early, as roots of smooth functions. */
final class Dangers {
    /** In the order of the stop events. */
    private static final List<Ended> REASONS = List.of(Ended.GROUND, Ended.INVERTED, Ended.SWAPPED_ENDS);
    /** Square of the sine of 80 degrees. */
    private static final double SWAPPED = 0.96985;
    /** Below some half metre a second across nothing has swapped ends yet [m2/s2]. */
    private static final double SLOW = 0.25;

    private final List<StopEvent> events;

    Dangers(RigidBody body) {
        double[] rotation = new double[9];
        events = List.of(
                event(StopEvent.Crossing.FALLING, (t, state) -> Kinematics.height(state)),
                event(StopEvent.Crossing.FALLING, (t, state) -> {
                    Kinematics.rotation(state, rotation);
                    return rotation[8] + 0.5;
                }),
                event(StopEvent.Crossing.RISING, (t, state) -> {
                    Motion m = body.motionAt(t, state);
                    double speed2 = m.u * m.u + m.v * m.v + m.w * m.w;
                    return m.v * m.v - SWAPPED * speed2 - SLOW;
                }));
    }

    /** The stop events. */
    List<StopEvent> events() {
        return events;
    }

    /** The reason for the stop with an index in {@link #events()}. */
    static Ended reason(int event) {
        return REASONS.get(event);
    }

    /** A function of time and state. */
    @FunctionalInterface
    interface Measure {
        /** Its value. */
        double value(double t, double[] state);
    }

    /** A stop event from a function. */
    static StopEvent event(StopEvent.Crossing crossing, Measure measure) {
        return new StopEvent() {
            @Override
            public double value(double t, double[] state) {
                return measure.value(t, state);
            }

            @Override
            public Crossing crossing() {
                return crossing;
            }
        };
    }
}
