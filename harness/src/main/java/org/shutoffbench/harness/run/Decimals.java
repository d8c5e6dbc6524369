package org.shutoffbench.harness.run;

/**
 * Numbers with a fixed count of decimals, written and rounded the same way, so that a value read back from a file is the
 * value that was counted.
 */
public final class Decimals {

    private static final long[] POWERS = {
        1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000, 1_000_000_000
    };

    private Decimals() {}

    /**
     * The nearest value with so many decimals; ties go up, minus zero becomes zero, NaN stays.
     *
     * @param digits 0 to 9
     */
    public static double round(double value, int digits) {
        return Double.isNaN(value) ? value : scaled(value, digits) / (double) POWERS[digits];
    }

    /** Appends a value with so many decimals; nothing for NaN. */
    public static void append(StringBuilder text, double value, int digits) {
        if (Double.isNaN(value)) {
            return;
        }
        long scaled = scaled(value, digits);
        if (scaled < 0) {
            text.append('-');
        }
        long magnitude = Math.abs(scaled);
        text.append(magnitude / POWERS[digits]);
        if (digits > 0) {
            String fraction = Long.toString(magnitude % POWERS[digits]);
            text.append('.').append("0".repeat(digits - fraction.length())).append(fraction);
        }
    }

    private static long scaled(double value, int digits) {
        double product = value * POWERS[digits];
        if (!(Math.abs(product) < 9e15)) {
            throw new ArithmeticException("too large to be written with " + digits + " decimals: " + value);
        }
        return Math.round(product);
    }
}
