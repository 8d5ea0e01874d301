package org.sawfly.motion;

/** A glide that does not exist for a glider. */
public final class NoTrimException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Why. */
    public enum Reason {
        /** The wing does not carry the weight at this speed short of stall. */
        NOT_ENOUGH_LIFT("the wing does not carry the weight short of stall"),
        /** The drag at this speed is more than the weight: even a dive is slower. */
        TOO_FAST("the drag is more than the weight"),
        /** The moments do not balance within the elevator's travel. */
        NOT_ENOUGH_ELEVATOR("the elevator does not reach far enough to hold the nose there"),
        /** A solution is bracketed but could not be refined. */
        NOT_CONVERGED("the search for the glide did not settle");

        private final String words;

        Reason(String words) {
            this.words = words;
        }
    }

    private final Reason reason;

    /**
     * Made for a reason.
     *
     * @param reason why
     * @param asked the speed asked for, in words
     */
    public NoTrimException(Reason reason, String asked) {
        super("no steady glide at " + asked + ": " + reason.words);
        this.reason = reason;
    }

    /** Why. */
    public Reason reason() {
        return reason;
    }
}
