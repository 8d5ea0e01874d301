package org.sawfly.cli.command;

import java.io.Serial;
import java.util.Objects;

/** Ends a command early with an exit code and what to tell the user: complete lines, the hint last. */
public final class CommandException extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    private final Exit exit;

    /**
     * Ends the command.
     *
     * @param exit how the run ends
     * @param message what the user reads on the error stream, one or more lines
     */
    public CommandException(Exit exit, String message) {
        super(message);
        this.exit = Objects.requireNonNull(exit);
    }

    /**
     * How the run ends.
     *
     * @return never {@code DONE}
     */
    public Exit exit() {
        return exit;
    }
}
