package org.sawfly.stability;

import java.util.List;
import org.sawfly.quantity.Quantity;
import org.sawfly.quantity.Unit;

/** A mode as it is shown. */
public final class ModeQuantities {
    public static final Quantity<Mode> PERIOD =
            new Quantity<>("period_s", "time of one swing", Unit.SECOND, 1, Mode::period);
    public static final Quantity<Mode> HALF = new Quantity<>(
            "half_s", "half gone after", Unit.SECOND, 1, mode -> mode.dies() ? mode.halfOrDouble() : Double.NaN);
    public static final Quantity<Mode> DOUBLE = new Quantity<>(
            "double_s", "doubles in", Unit.SECOND, 1, mode -> mode.dies() ? Double.NaN : mode.halfOrDouble());
    public static final Quantity<Mode> DAMPING =
            new Quantity<>("damping_ratio", "damping ratio", Unit.NUMBER, 3, Mode::damping);

    /** All of them. */
    public static final List<Quantity<Mode>> ALL = List.of(PERIOD, HALF, DOUBLE, DAMPING);

    private ModeQuantities() {}
}
