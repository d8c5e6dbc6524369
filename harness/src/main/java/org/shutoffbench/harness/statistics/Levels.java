package org.shutoffbench.harness.statistics;

/** Checks of the arguments that many methods share. */
final class Levels {

    private Levels() {}

    static double probability(double value, String name) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException(name + " must lie in (0, 1), not " + value);
        }
        return value;
    }

    static long atLeast(long value, long least, String name) {
        if (value < least) {
            throw new IllegalArgumentException(name + " must be at least " + least + ", not " + value);
        }
        return value;
    }
}
