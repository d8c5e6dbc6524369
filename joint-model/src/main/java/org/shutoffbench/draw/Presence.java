package org.shutoffbench.draw;

/**
 * A thing that is there (1) or not (0).
 *
 * @param probability of being there, in [0, 1]
 */
public record Presence(double probability) implements Distribution {

    public Presence {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability must lie in [0, 1]");
        }
    }

    @Override
    public double quantile(double uniform) {
        return isPresent(uniform) ? 1 : 0;
    }

    /** Whether it is there at a drawn uniform number. */
    public boolean isPresent(double uniform) {
        return uniform >= 1 - probability;
    }
}
