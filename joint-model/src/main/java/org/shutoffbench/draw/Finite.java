package org.shutoffbench.draw;

/** Checks of distribution parameters. */
final class Finite {

    private Finite() {}

    static void require(double value, String name) {
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be finite");
        }
    }

    static void requireNotNegative(double value, String name) {
        require(value, name);
        if (value < 0) {
            throw new IllegalArgumentException(name + " must not be negative");
        }
    }
}
