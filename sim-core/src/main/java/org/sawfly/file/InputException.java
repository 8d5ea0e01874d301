package org.sawfly.file;

import java.util.List;
import java.util.stream.Collectors;

/** An input that is not accepted, with everything that is wrong with it in the order of the file. */
public final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    public InputException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    public List<Problem> problems() {
        return problems;
    }
}
