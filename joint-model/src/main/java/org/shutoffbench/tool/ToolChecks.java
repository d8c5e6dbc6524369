package org.shutoffbench.tool;

/** Refuses parameters that no tool can have. */
final class ToolChecks {

    private ToolChecks() {}

    static void positive(String symbol, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(symbol + " must be positive and finite, not " + value);
        }
    }

    static void notNegative(String symbol, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(symbol + " must be finite and not negative, not " + value);
        }
    }
}
