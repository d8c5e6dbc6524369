package org.shutoffbench.harness.cli;

/** What the user gave cannot be used; the message says what, where and what to do instead. */
final class InputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    InputException(String message) {
        super(message);
    }
}
