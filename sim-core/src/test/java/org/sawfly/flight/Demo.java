package org.sawfly.flight;

import java.util.LinkedHashMap;
import java.util.Map;
import org.sawfly.aero.Corrections;
import org.sawfly.aero.Models;
import org.sawfly.glider.Glider;
import org.sawfly.glider.Hand;
import org.sawfly.glider.Plover;
import org.sawfly.motion.Adaptive;
import org.sawfly.motion.Axes;
import org.sawfly.section.Section;
import org.sawfly.section.SectionEstimate;
import org.sawfly.section.SectionShape;

/** The invented demo glider plover and the invented thrower club, ready to fly in tests. */
public final class Demo {
    private static final Section ROOT = estimate(0.062, 0.019, 0.32);
    private static final Section TIP = estimate(0.054, 0.017, 0.32);
    private static final Section TAIL = estimate(0.06, 0, 0.42);
    public static final Glider GLIDER = Plover.glider(ROOT, TIP, TAIL);
    public static final Models MODELS = new Models();
    public static final Weather CALM = new Weather(0, 0.14, 288.15, 0);
    public static final GlideSettings SETTINGS = settings();

    private Demo() {}

    private static Section estimate(double thickness, double camber, double flap) {
        return new SectionEstimate(SectionShape.of(thickness, camber, flap)).table();
    }

    private static GlideSettings settings() {
        Map<String, Double> camberDown = new LinkedHashMap<>();
        camberDown.put("speed", -0.001);
        camberDown.put("cruise", 0.001);
        camberDown.put("thermal", 0.004);
        return new GlideSettings(camberDown, "cruise");
    }

    public static Thrower thrower(Hand hand) {
        return new Thrower(hand, 41, Double.NaN, Math.toRadians(15), Double.NaN, 0.72, 3, 2, 0.75);
    }

    public static Launch launch(Hand hand, Weather weather) {
        return new Launch(
                "club",
                thrower(hand),
                new Preset(0.0008, 0.0015, 0, 0.35),
                Math.toRadians(68),
                PushOver.NORMAL,
                1.7,
                Math.toRadians(10),
                weather);
    }

    public static Craft craft(Glider glider, Corrections corrections) {
        return Craft.of(glider, corrections, MODELS, SETTINGS, CALM.ground());
    }

    public static Craft craft() {
        return craft(GLIDER, Corrections.NONE);
    }

    public static FlightPlan plan(Craft craft, Launch launch, double speed, double yawRate, Axes axes) {
        double chord = craft.deflections().elevatorChord();
        double cruise = Deflections.deflection(craft.cruise().elevator(), chord);
        double preset = Deflections.angle(cruise - launch.preset().elevatorUp(), chord);
        return new FlightPlan(craft, launch, speed, yawRate, preset, axes, Adaptive::usual);
    }

    public static FlightPlan plan(double speed, double yawRate, Axes axes) {
        return plan(craft(), launch(Hand.RIGHT, CALM), speed, yawRate, axes);
    }
}
