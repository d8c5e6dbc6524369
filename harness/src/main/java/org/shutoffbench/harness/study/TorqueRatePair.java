package org.shutoffbench.harness.study;

import org.jspecify.annotations.Nullable;

/**
 * Scatter on a hard and on a soft family together, in ISO 5393 style; the standard itself excludes impact tools.
 *
 * @param strategy index of the strategy
 * @param quantity what the figures are about
 * @param hardFamily index of the hard family; null where the
 *     mean is 0
 * @param softFamily index of the soft family
 * @param hardScatterPercent two times the chosen number of standard deviations over the mean, hard family; null where the
 *     mean is 0
 * @param softScatterPercent the same on the soft family
 * @param meanShiftPercent hard mean less soft mean, over the combined mean
 * @param combinedMean middle of the range that both scatters span, in the quantity's unit
 * @param combinedScatterPercent that range over the combined mean
 */
public record TorqueRatePair(
        int strategy,
        Quantity quantity,
        int hardFamily,
        int softFamily,
        @Nullable Double hardScatterPercent,
        @Nullable Double softScatterPercent,
        @Nullable Double meanShiftPercent,
        double combinedMean,
        @Nullable Double combinedScatterPercent) {}
