package org.shutoffbench.harness.study;

import org.jspecify.annotations.Nullable;

/**
 * A number with its interval; an end is null where the data leave it open.
 *
 * @param value null where it cannot be estimated (a standard deviation of one joint)
 */
public record Estimate(
        @Nullable Double value,
        @Nullable Double low,
        @Nullable Double high) {

    /** What cannot be estimated. */
    public static final Estimate NONE = new Estimate(null, null, null);
}
