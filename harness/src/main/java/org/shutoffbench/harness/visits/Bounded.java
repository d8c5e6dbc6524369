package org.shutoffbench.harness.visits;

import java.util.function.DoubleUnaryOperator;
import org.shutoffbench.harness.audit.Share;
import org.shutoffbench.harness.statistics.Interval;

/**
 * A number that is not negative, with bounds.
 *
 * @param estimate NaN where nothing was counted
 * @param low lower bound
 * @param high upper bound; may be infinite
 */
public record Bounded(double estimate, double low, double high) {

    public Bounded {
        if (!(0 <= low && low <= high)) {
            throw new IllegalArgumentException("bounds must rise from 0: " + low + ", " + high);
        }
    }

    static Bounded exactly(double value) {
        return new Bounded(value, value, value);
    }

    static Bounded of(Share share, double confidence) {
        Interval interval = share.interval(confidence);
        return new Bounded(share.estimate(), interval.low(), interval.high());
    }

    /** The same through a function that never falls. */
    Bounded rising(DoubleUnaryOperator f) {
        return new Bounded(f.applyAsDouble(estimate), f.applyAsDouble(low), f.applyAsDouble(high));
    }

    /** The same through a function that never rises. */
    Bounded falling(DoubleUnaryOperator f) {
        return new Bounded(f.applyAsDouble(estimate), f.applyAsDouble(high), f.applyAsDouble(low));
    }

    /** Sum, bounds added. */
    Bounded plus(Bounded other) {
        return new Bounded(estimate + other.estimate, low + other.low, high + other.high);
    }

    /** Product, bounds multiplied; nothing times a number that was not counted is nothing. */
    Bounded times(Bounded other) {
        double product = estimate == 0 || other.estimate == 0 ? 0 : estimate * other.estimate;
        return new Bounded(product, low * other.low, high * other.high);
    }

    Bounded times(double factor) {
        return new Bounded(estimate * factor, low * factor, high * factor);
    }
}
