package org.shutoffbench.harness.study;

/**
 * The quantity a joint is judged by, and its window, edges included.
 *
 * @param quantity which truth
 * @param target in the quantity's unit, above 0
 * @param lowest lower edge of the window, same unit
 * @param highest upper edge of the window, same unit
 */
public record Judge(Quantity quantity, double target, double lowest, double highest) {

    public Judge {
        if (!(target > 0 && lowest <= target && target <= highest)) {
            throw new IllegalArgumentException(
                    "the window must hold the target: " + lowest + " <= " + target + " <= " + highest);
        }
    }

    /** Relative distance from the target: -1 is nothing at all, 0 on target. */
    public double deviation(double value) {
        return (value - target) / target;
    }
}
