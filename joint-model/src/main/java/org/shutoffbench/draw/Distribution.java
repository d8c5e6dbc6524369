package org.shutoffbench.draw;

/** A distribution by its inverse: one uniform number in, one drawn number out. Monotone, immutable, free of allocation. */
public sealed interface Distribution permits Constant, CutNormal, Lognormal, Uniform, Presence {

    /**
     * The number below which a draw falls with the given probability.
     *
     * @param uniform in the open interval (0, 1)
     */
    double quantile(double uniform);
}
