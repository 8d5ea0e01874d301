package org.sawfly.strength;

import java.util.EnumMap;
import java.util.Map;
import org.sawfly.flight.FlightPlan;
import org.sawfly.flight.LaunchLoads;
import org.sawfly.flight.RearLoads;
import org.sawfly.glider.BoomSwing;

/**
 * The four load cases of one launch along the boom, from the flight itself.
 *
 * <p>At release the load in the spin gives way to that of free flight within a time t_r, taken as even in time. A beam that
 * carried M_spin and is let down to M_free then swings about M_free by {@code (M_spin - M_free) |sin(pi t_r/T)|/(pi t_r/T)}, T
 * the period of its first bending ({@link BoomSwing#leftAfter}), so that on the far side
 *
 * <pre>  M = M_free - (M_spin - M_free) |sin(pi t_r/T)|/(pi t_r/T)</pre>
 */
public final class LaunchCases {
    /** Time in which the peg leaves the fingers [s]; common practice, no source. */
    public static final double LETTING_GO = 0.010;

    private final LoadedBoom boom;
    private final RearLoads spin;
    private final RearLoads free;
    private final RearLoads pullUp;
    private final double rebound;

    private LaunchCases(LoadedBoom boom, RearLoads spin, RearLoads free, RearLoads pullUp, double rebound) {
        this.boom = boom;
        this.spin = spin;
        this.free = free;
        this.pullUp = pullUp;
        this.rebound = rebound;
    }

    /**
     * The cases of a launch.
     *
     * @param plan glider, launch and release speed
     * @param lettingGo t_r [s]
     */
    public static LaunchCases of(FlightPlan plan, double lettingGo) {
        double frequency = BoomSwing.inFlight(plan.craft().glider(), BoomSwing.Plane.SIDE);
        return of(plan, BoomSwing.leftAfter(lettingGo, frequency), new LoadedBoom(plan));
    }

    /** The same with what does not depend on the throw known: the overshoot at release and the loaded boom. */
    static LaunchCases of(FlightPlan plan, double rebound, LoadedBoom boom) {
        double front = boom.frontX();
        RearLoads pullUp =
                LaunchLoads.greatest(plan, rear -> Math.abs(boom.at(front, rear).up()));
        return new LaunchCases(boom, LaunchLoads.inSpin(plan), LaunchLoads.letGo(plan), pullUp, rebound);
    }

    /** The same glider and way of throwing at another release speed [m/s]. */
    LaunchCases at(FlightPlan plan, double speed) {
        return of(plan.withRelease(speed, plan.yawRate()), rebound, boom);
    }

    /** Load of a case at a place x, build axes [m]. */
    public BoomLoad at(LoadCase loadCase, double x) {
        return switch (loadCase) {
            case SPIN -> boom.at(x, spin);
            case SPIN_FIN_UNLOADED -> boom.at(x, spin.finUnloaded());
            case RELEASE -> {
                BoomLoad after = boom.at(x, free);
                BoomLoad gone = boom.at(x, spin).plus(-1, after);
                yield after.plus(-rebound, gone);
            }
            case PULL_UP -> boom.at(x, pullUp);
        };
    }

    /** All cases at a place x, build axes [m]. */
    public Map<LoadCase, BoomLoad> at(double x) {
        Map<LoadCase, BoomLoad> loads = new EnumMap<>(LoadCase.class);
        for (LoadCase loadCase : LoadCase.values()) {
            loads.put(loadCase, at(loadCase, x));
        }
        return loads;
    }

    /** What loads the rear in a case; for the release that of the moment after the hand has opened. */
    public RearLoads rear(LoadCase loadCase) {
        return switch (loadCase) {
            case SPIN -> spin;
            case SPIN_FIN_UNLOADED -> spin.finUnloaded();
            case RELEASE -> free;
            case PULL_UP -> pullUp;
        };
    }

    /** The boom with its masses. */
    public LoadedBoom boom() {
        return boom;
    }
}
