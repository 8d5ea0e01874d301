package org.sawfly.cli.command;

/** How a run ends: the exit codes of the program. */
public enum Exit {
    /** Done. */
    DONE(0),
    /** A fault of the program. */
    FAULT(1),
    /** Wrong use: an unknown word, a missing or senseless option. */
    WRONG_USE(2),
    /** A file or a value was not accepted. */
    NOT_ACCEPTED(3),
    /** The question has no answer: the glider does not trim, no row of a study has a result. */
    NO_ANSWER(4),
    /** The result could not be written. */
    NOT_WRITTEN(5);

    private final int code;

    Exit(int code) {
        this.code = code;
    }

    /**
     * The number the process ends with.
     *
     * @return 0 to 5
     */
    public int code() {
        return code;
    }
}
