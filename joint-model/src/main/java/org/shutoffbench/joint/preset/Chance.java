package org.shutoffbench.joint.preset;

/**
 * Something that is there with a probability and then has a size drawn evenly from a range.
 *
 * @param probability in [0, 1]
 * @param lowest smallest size; not negative
 * @param highest largest size; not below the smallest
 */
public record Chance(double probability, double lowest, double highest) {

    public static final Chance NEVER = new Chance(0, 0, 0);

    public Chance {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability must lie in [0, 1]");
        }
        if (!(lowest >= 0 && lowest <= highest && highest < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a range must rise from 0 or above");
        }
    }

    /** Always there. */
    public static Chance always(double lowest, double highest) {
        return new Chance(1, lowest, highest);
    }

    /** Mean size, absence counted as 0. */
    public double mean() {
        return probability * (lowest + highest) / 2;
    }
}
