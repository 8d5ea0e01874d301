package org.sawfly.motion;

/** A motion that could not be carried on. */
public final class IntegrationException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Why. */
    public enum Reason {
        /** More evaluations than the bound allows. */
        TOO_MANY_EVALUATIONS("more evaluations than allowed"),
        /** The step size that the tolerances ask for is below the smallest. */
        STEP_TOO_SMALL("the step would have to be smaller than allowed"),
        /** The state is no longer finite. */
        NOT_FINITE("the motion is no longer finite");

        private final String words;

        Reason(String words) {
            this.words = words;
        }
    }

    private final Reason reason;

    /** Made for a reason at a time [s]. */
    public IntegrationException(Reason reason, double time) {
        super(reason.words + ", at " + time + " s");
        this.reason = reason;
    }

    /** Why. */
    public Reason reason() {
        return reason;
    }
}
