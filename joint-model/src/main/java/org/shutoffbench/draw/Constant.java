package org.shutoffbench.draw;

/**
 * Always the same number.
 *
 * @param value the number; finite
 */
public record Constant(double value) implements Distribution {

    public Constant {
        Finite.require(value, "value");
    }

    @Override
    public double quantile(double uniform) {
        return value;
    }
}
