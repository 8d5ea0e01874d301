package org.sawfly.aero;

/** Where the energy of the throw goes: the aerodynamic lines of the energy ledger. */
public enum Loss {
    /** Lift and what it induces, all surfaces. */
    LIFT,
    /** Section drag of the wing. */
    WING_PROFILE,
    /** Section drag of the tailplane. */
    TAILPLANE_PROFILE,
    /** Section drag of the fin. */
    FIN_PROFILE,
    /** Pod, boom and peg. */
    BODIES,
    /** The pod's Munk moment and what passes through the boom's bending: an exchange, small. */
    EXCHANGE;

    /** How many there are. */
    public static final int COUNT = values().length;
}
