package org.sawfly.flight;

import org.sawfly.aero.Motion;
import org.sawfly.math.SmoothStep;
import org.sawfly.motion.Axes;
import org.sawfly.motion.Controls;
import org.sawfly.motion.Kinematics;
import org.sawfly.motion.StateLayout;
import org.sawfly.motion.Trim;

/**
 * Flies one launch: preset, climb, push-over, glide. Every change from one to the next runs over time by
 * {@link SmoothStep}, so that a flight depends smoothly on whatever is varied.
 *
 * <p>The pilot sees the nose in the plane of the throw, where it may go over the vertical. With roll as a freedom of motion a
 * launch may turn far out of that plane: there it is the plane of the throw in the climb alone, and from the push-over on the
 * horizon, whichever way the launch has turned.
 *
 * <p>With roll as a freedom of motion the ailerons level the wings from the end of the preset on by a roll rate
 * {@code p_c = -3 R32}, and the rudder takes out the yaw rate, each as far as it reaches and with its servo's lag. Travel of both:
 * common practice, no source.
 *
 * <p>Without roll as a freedom of motion the roll rate is prescribed: none until the push-over, afterwards the wings are
 * brought level, {@code p = -3 R32} with R32 the sine of the right wing's drop, faded in over {@link #LEVEL_TIME}. (The bank
 * angle itself has no meaning in a vertical climb and is never used.)
 */
final class Pilot implements Controls {
    /** Over which the preset is blended out [s]. */
    static final double BLEND_TIME = 0.15;
    /** Over which the nose is brought down [s]. */
    static final double PUSH_TIME = 0.6;
    /** Over which the speed begins to steer the nose [s]. */
    static final double SPEED_FADE_TIME = 1;

    private static final double LEVEL_TIME = 0.3;
    private static final double LEVEL_RATE = 3;
    /** Nose up for each m/s too fast in the glide [rad s/m]. */
    private static final double NOSE_PER_SPEED = 0.06;

    private static final double GLIDE_LOWEST = -0.6109;
    private static final double GLIDE_HIGHEST = 0.3491;

    private static final double AILERON_TRAVEL = 15.0 / 360.0 * 2 * Math.PI;
    private static final double RUDDER_TRAVEL = 25.0 / 360.0 * 2 * Math.PI;
    /** In which the ailerons are to reach a roll rate, the rudder a yaw rate [s]. */
    private static final double ROLL_TIME = 0.10, YAW_TIME = 0.20;
    /** Deflection per rate, never more [s]. */
    private static final double LARGEST_ROLL_GAIN = 0.3, LARGEST_YAW_GAIN = 0.3;

    private final PilotLaw law;
    private final RateLaw rollLaw;
    private final RateLaw yawLaw;
    private final Steering steering;
    private final double presetAileron;
    private final Craft craft;
    private final double presetElevator;
    private final double presetCamber;
    private final double presetRudder;
    private final double presetEnd;
    private final double climbAngle;
    private final boolean levels;
    private final boolean rolls;
    private final double[] rotation = new double[9];
    private double pushStart = Double.POSITIVE_INFINITY;

    /**
     * A pilot for one flight.
     *
     * @param presetElevator where the elevator is held at first [rad]
     * @param axes freedoms of motion
     * @param steering which controls are moved
     */
    Pilot(Craft craft, Launch launch, double presetElevator, Axes axes, Steering steering) {
        this.craft = craft;
        this.law = new PilotLaw(craft.mass().inertia().iyy(), craft.power().elevator(), Trim.ELEVATOR_TRAVEL);
        this.rollLaw = new RateLaw(
                craft.mass().inertia().ixx(), craft.power().aileron(), ROLL_TIME, LARGEST_ROLL_GAIN, AILERON_TRAVEL);
        this.yawLaw = new RateLaw(
                craft.mass().inertia().izz(), craft.power().rudder(), YAW_TIME, LARGEST_YAW_GAIN, RUDDER_TRAVEL);
        this.steering = steering;
        this.rolls = axes == Axes.ALL;
        this.presetAileron = presetAileron(craft, launch);
        this.presetElevator = presetElevator;
        this.presetCamber = presetCamber(craft, launch);
        this.presetRudder = presetRudder(craft, launch);
        this.presetEnd = launch.presetEnd();
        this.climbAngle = launch.flownClimb();
        this.levels = axes == Axes.PITCH_YAW;
    }

    /** Camber held until the push-over [rad]: the preset's reflex counted from the cruise setting. */
    static double presetCamber(Craft craft, Launch launch) {
        double chord = craft.deflections().flaperonChord();
        double down = Deflections.deflection(craft.cruiseCamber(), chord)
                - launch.preset().camberUp();
        return Deflections.angle(down, chord);
    }

    /** Rudder held until the preset ends, trailing edge left positive [rad]. */
    static double presetRudder(Craft craft, Launch launch) {
        return Deflections.angle(
                launch.preset().rudderLeft(), craft.deflections().rudderChord());
    }

    /** Aileron held until the preset ends, rolling right positive [rad]. */
    static double presetAileron(Craft craft, Launch launch) {
        return Deflections.angle(
                launch.preset().aileronRight(), craft.deflections().flaperonChord());
    }

    /** Begins the push-over at a time [s]. */
    void pushOver(double t) {
        pushStart = t;
    }

    @Override
    public void command(double t, double[] state, Motion motion, double[] commands) {
        double out = SmoothStep.at((t - presetEnd) / BLEND_TIME);
        double pushed = SmoothStep.at((t - pushStart) / PUSH_TIME);
        commands[0] = presetElevator;
        commands[1] = presetCamber + (craft.cruiseCamber() - presetCamber) * pushed;
        commands[2] = presetAileron * (1 - out);
        commands[3] = presetRudder * (1 - out);
        if (out == 0) {
            return;
        }
        Kinematics.rotation(state, rotation);
        double speed = Kinematics.airspeed(motion);
        double trim = craft.cruise().elevator();
        double flown = trim;
        if (steering.elevator()) {
            double nose = Kinematics.noseElevation(rotation, 0, rolls ? pushed : 0);
            flown = law.elevator(trim, wantedNose(t, pushed, speed), nose, motion.q, speed, motion.density);
        }
        commands[0] += (flown - presetElevator) * out;
        if (rolls && steering.aileron()) {
            commands[2] += out * rollLaw.deflection(0, -LEVEL_RATE * rotation[7] - motion.p, speed, motion.density);
        }
        if (rolls && steering.rudder()) {
            commands[3] += out * yawLaw.deflection(0, motion.r, speed, motion.density);
        }
    }

    private double wantedNose(double t, double pushed, double speed) {
        double glideNose = craft.cruise().noseElevation();
        double bySpeed = SmoothStep.at((t - pushStart - PUSH_TIME) / SPEED_FADE_TIME);
        double wanted = climbAngle + (glideNose - climbAngle) * pushed;
        if (bySpeed == 0) {
            return wanted;
        }
        double held = SmoothStep.between(
                GLIDE_LOWEST,
                GLIDE_HIGHEST,
                glideNose + bySpeed * NOSE_PER_SPEED * (speed - craft.cruise().speed()));
        return wanted + held - glideNose;
    }

    @Override
    public double rollRate(double t, double[] state) {
        double level = levels ? SmoothStep.at((t - pushStart) / LEVEL_TIME) : 0;
        if (level == 0) {
            return 0;
        }
        Kinematics.rotation(state, rotation);
        return -LEVEL_RATE * level * rotation[7];
    }

    @Override
    public double rollAcceleration(double t, double[] state) {
        double x = (t - pushStart) / LEVEL_TIME;
        if (!levels || x <= 0) {
            return 0;
        }
        Kinematics.rotation(state, rotation);
        // dR/dt = R (omega x): the middle of the last row grows by -r R31 + p R33
        double dropRate = -state[StateLayout.R] * rotation[6] + state[StateLayout.P] * rotation[8];
        return -LEVEL_RATE * (SmoothStep.slope(x) / LEVEL_TIME * rotation[7] + SmoothStep.at(x) * dropRate);
    }
}
