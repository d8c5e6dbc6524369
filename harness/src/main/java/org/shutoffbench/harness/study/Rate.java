package org.shutoffbench.harness.study;

import org.shutoffbench.harness.statistics.BinomialInterval;
import org.shutoffbench.harness.statistics.Interval;

/**
 * A share of joints with its interval.
 *
 * @param count joints that have it
 * @param n joints run
 * @param estimate count / n
 * @param low lower end of the interval, 0 to 1
 * @param high upper end of the interval, 0 to 1
 * @param kind title of the interval, such as "Clopper-Pearson" or "by lot"
 * @param designEffect variance by cluster over variance of independent joints, 1 where joints are independent
 */
public record Rate(long count, long n, double estimate, double low, double high, String kind, double designEffect) {

    /** The rate of independent joints. */
    static Rate ofIndependent(long count, long n, Methods methods) {
        BinomialInterval method = switch (methods.rates()) {
            case CLOPPER_PEARSON -> BinomialInterval.CLOPPER_PEARSON;
            case WILSON -> BinomialInterval.WILSON;
        };
        Interval interval = method.of(count, n, methods.confidence());
        return new Rate(
                count,
                n,
                (double) count / n,
                interval.low(),
                interval.high(),
                methods.rates().title(),
                1);
    }
}
