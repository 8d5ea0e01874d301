package org.sawfly.flight;

/** The thrower's sightings cannot be met: no release gives them. The message is in a pilot's words. */
public final class NoThrowException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** With the reason. */
    public NoThrowException(String message) {
        super(message);
    }
}
