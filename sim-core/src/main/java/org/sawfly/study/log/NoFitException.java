package org.sawfly.study.log;

/** Logs cannot be fitted. The message says why, in words. */
public final class NoFitException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** With the reason. */
    public NoFitException(String message) {
        super(message);
    }
}
