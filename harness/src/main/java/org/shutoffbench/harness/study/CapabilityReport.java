package org.shutoffbench.harness.study;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.statistics.CapabilityIndex;
import org.shutoffbench.harness.statistics.Interval;

/**
 * Percentile-form capability with bounds from the bounds of the three points it is made of; these share the error between
 * them, so the bounds are conservative. An index is monotone in each point, so its extremes lie at their bounds.
 */
record CapabilityReport(Judge judge, Bounded low, Bounded median, Bounded high) {

    /** A percentage point and its bounds, infinite where open. */
    record Bounded(double value, Interval bounds) {}

    QuantitySummary.Capability summarise() {
        double from = judge.lowest();
        double to = judge.highest();
        double spread = CapabilityIndex.spread(from, to, low.value(), high.value());
        double worst = CapabilityIndex.worstSide(from, to, low.value(), median.value(), high.value());
        double narrowest = high.bounds().low() - low.bounds().high();
        Estimate spreadBounded = new Estimate(
                spread,
                known((to - from) / (high.bounds().high() - low.bounds().low())),
                narrowest > 0 ? known((to - from) / narrowest) : null);
        Interval upper = oneSide(to, median.bounds(), high.bounds());
        Interval lower = oneSide(-from, turned(median.bounds()), turned(low.bounds()));
        return new QuantitySummary.Capability(
                spreadBounded,
                new Estimate(
                        worst, known(Math.min(upper.low(), lower.low())), known(Math.min(upper.high(), lower.high()))));
    }

    private static Interval turned(Interval interval) {
        return new Interval(-interval.high(), -interval.low());
    }

    /** Extremes of (edge - median)/(outer - median). */
    private static Interval oneSide(double edge, Interval median, Interval outer) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (double middle : new double[] {median.low(), median.high()}) {
            for (double end : new double[] {outer.low(), outer.high()}) {
                double ratio = end > middle ? (edge - middle) / (end - middle) : Double.POSITIVE_INFINITY;
                double bounded = Double.isInfinite(end) ? Double.NEGATIVE_INFINITY : ratio;
                least = Math.min(least, bounded);
                most = Math.max(most, ratio);
            }
        }
        return new Interval(least, most);
    }

    private static @Nullable Double known(double index) {
        return Double.isFinite(index) && index != 0 ? index : null;
    }
}
