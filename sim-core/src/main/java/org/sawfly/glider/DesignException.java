package org.sawfly.glider;

/** A glider that cannot be built as described; the message says why and what the bound is, in a builder's words. */
public final class DesignException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public DesignException(String message) {
        super(message);
    }
}
