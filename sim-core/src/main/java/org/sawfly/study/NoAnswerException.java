package org.sawfly.study;

/** There is no answer: the glider cannot be trimmed, the throw cannot be met. The message says which, in words. */
public final class NoAnswerException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** With the reason and what found it. */
    public NoAnswerException(String message, Throwable cause) {
        super(message, cause);
    }
}
