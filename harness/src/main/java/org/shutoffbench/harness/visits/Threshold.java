package org.shutoffbench.harness.visits;

import org.shutoffbench.harness.scenario.Costs;

/**
 * The rate of joints left low from which on an audit of every joint costs less than none: p* = (c_a + r c_r)/(D (c_f - c_r)
 * + r c_r). Above 1 no audit pays.
 *
 * @param auditCost c_a
 * @param reworkCost c_r
 * @param escapeCost c_f, above c_r
 */
public record Threshold(double auditCost, double reworkCost, double escapeCost) {

    public Threshold {
        if (!(auditCost >= 0 && reworkCost >= 0 && escapeCost > reworkCost)) {
            throw new IllegalArgumentException("costs must not be negative, an escape must cost more than a rework");
        }
    }

    static Threshold of(Costs costs) {
        return new Threshold(costs.auditCost(), costs.reworkCost(), costs.escape());
    }

    /**
     * p*; NaN where D or r is not known, infinite where neither a detection nor a rejection pays for anything.
     *
     * @param detection D, 0 to 1
     * @param falseRejection r, 0 to 1
     */
    public double at(double detection, double falseRejection) {
        double paid = auditCost + falseRejection * reworkCost;
        double won = detection * (escapeCost - reworkCost) + falseRejection * reworkCost;
        if (Double.isNaN(won)) {
            return Double.NaN;
        }
        if (won > 0) {
            return paid / won;
        }
        return paid > 0 ? Double.POSITIVE_INFINITY : 0;
    }

    /**
     * p* with bounds that hold wherever D and r lie in theirs. It falls with D. In r its slope has the sign of D (c_f - c_r) -
     * c_a, so that its extremes lie at the ends of r for every D.
     */
    public Bounded of(Bounded detection, Bounded falseRejection) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (double d : new double[] {detection.low(), detection.high()}) {
            for (double r : new double[] {falseRejection.low(), falseRejection.high()}) {
                low = Math.min(low, at(d, r));
                high = Math.max(high, at(d, r));
            }
        }
        return new Bounded(at(detection.estimate(), falseRejection.estimate()), low, high);
    }
}
