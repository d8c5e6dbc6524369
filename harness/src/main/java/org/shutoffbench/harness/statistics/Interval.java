package org.shutoffbench.harness.statistics;

/**
 * A two-sided interval; an open end is infinite.
 *
 * @param low lower end
 * @param high upper end, not below {@code low}
 */
public record Interval(double low, double high) {

    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval needs low <= high, not " + low + " and " + high);
        }
    }

    /** Whether it holds a value, ends included. */
    public boolean holds(double value) {
        return low <= value && value <= high;
    }

    /** high - low. */
    public double width() {
        return high - low;
    }
}
