package org.sawfly.cli.answer;

/** A file that could not be written; the program ends with exit code {@value #EXIT_CODE}. */
public final class CannotWrite extends RuntimeException {
    /** Exit code of the program. */
    public static final int EXIT_CODE = 5;

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
