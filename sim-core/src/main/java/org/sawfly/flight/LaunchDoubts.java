package org.sawfly.flight;

/**
 * Doubts about a launch that the thrower cannot measure, as offsets that are 0 by default. Uncertainty draws and users set
 * them; what was seen on the field (usual height, first swing) is met with them in place.
 *
 * @param noseOut nose further outward of the path at release than the balance about the peg says [rad]
 * @param steeper nose higher in the climb than the launch says [rad]
 * @param presetUp elevator held further up in the preset than the launch says [rad]
 * @param pushFaster airspeed at which the push-over begins, above what the launch says [m/s]
 * @param late the preset ends, and a push-over given as a time begins, this much later [s]
 * @param bank tip in the hand lower at release; acts where roll is free [rad]
 */
public record LaunchDoubts(
        double noseOut, double steeper, double presetUp, double pushFaster, double late, double bank) {
    /** None. */
    public static final LaunchDoubts NONE = new LaunchDoubts(0, 0, 0, 0, 0, 0);
}
