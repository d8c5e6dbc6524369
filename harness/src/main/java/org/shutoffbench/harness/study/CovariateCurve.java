package org.shutoffbench.harness.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Rates by class of a drawn parameter: how a strategy's silent misses grow with prevailing torque.
 *
 * @param family index of the family
 * @param strategy index of the strategy
 * @param name of the parameter
 * @param unit of the parameter
 * @param bins ascending
 */
public record CovariateCurve(int family, int strategy, String name, String unit, List<Bin> bins) {

    public CovariateCurve {
        bins = List.copyOf(bins);
    }

    /**
     * One class of the parameter.
     *
     * @param from lower edge, included
     * @param to upper edge
     * @param inWindow null where no joint fell into the class
     * @param silentMiss null where no joint fell into the class
     */
    public record Bin(
            double from,
            double to,
            @Nullable Rate inWindow,
            @Nullable Rate silentMiss) {}
}
