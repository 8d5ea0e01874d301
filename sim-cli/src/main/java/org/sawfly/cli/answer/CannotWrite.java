package org.sawfly.cli.answer;

/** A file that could not be written; the program ends with exit code 5. */
public final class CannotWrite extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** With the message for the user: what, where, why. */
    public CannotWrite(String message, Throwable cause) {
        super(message, cause);
    }

    /** With the message for the user: what, where, why. */
    public CannotWrite(String message) {
        super(message);
    }
}
