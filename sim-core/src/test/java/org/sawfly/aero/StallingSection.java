package org.sawfly.aero;

import org.sawfly.section.Section;

/**
 * A section for tests: slope 2 pi about a zero-lift angle that a flap shifts, gives way between 9 and 15 deg to a plate with
 * normal force 2 sin(alpha), also in reverse; drag falls with the square root of the Reynolds number.
 */
final class StallingSection implements Section {
    private final double zeroLift;

    StallingSection(double zeroLift) {
        this.zeroLift = zeroLift;
    }

    @Override
    public void at(double alpha, double reynolds, double flap, double[] out) {
        double a = alpha - zeroLift + 0.6 * flap;
        double towardsStall = Math.IEEEremainder(alpha - zeroLift + 0.25 * flap, 2 * Math.PI);
        double attached = 1 - smooth((Math.toDegrees(Math.abs(towardsStall)) - 9) / 6);
        double plate = 2 * Math.sin(alpha);
        out[0] = attached * 2 * Math.PI * Math.sin(a) + (1 - attached) * plate * Math.cos(alpha);
        out[1] = 3.2 / Math.sqrt(reynolds) + (1 - attached) * plate * Math.sin(alpha);
        out[2] = attached * (1.2 * zeroLift - 0.6 * flap) - (1 - attached) * 0.2 * plate;
    }

    private static double smooth(double x) {
        double t = Math.min(Math.max(x, 0), 1);
        return t * t * (3 - 2 * t);
    }
}
