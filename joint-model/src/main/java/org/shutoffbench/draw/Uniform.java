package org.shutoffbench.draw;

/**
 * All numbers of an interval alike.
 *
 * @param from lower end; finite
 * @param to upper end; finite, not below the lower end
 */
public record Uniform(double from, double to) implements Distribution {

    public Uniform {
        Finite.require(from, "lower end");
        Finite.require(to, "upper end");
        if (to < from) {
            throw new IllegalArgumentException("upper end must not lie below the lower end");
        }
    }

    @Override
    public double quantile(double uniform) {
        return from + uniform * (to - from);
    }
}
