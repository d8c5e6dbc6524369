package org.shutoffbench.harness.scenario;

import org.shutoffbench.harness.scenario.unit.Quantity;

/**
 * What time, rework and an escaped joint cost, and how a sampled audit is done.
 *
 * @param currency name of the unit of money, for people
 * @param perHour cost of an hour of labour
 * @param tightening handling of a joint at the first visit, tool time not counted, s
 * @param audit one audit of a joint, s
 * @param rework putting one joint right, s
 * @param reworkParts parts of one rework, in money
 * @param escape cost of a joint that is left low, in money; more than a rework
 * @param sample share of a lot that a sampled audit checks, above 0, at most 1
 * @param lot joints of which one sample is drawn
 */
public record Costs(
        String currency,
        double perHour,
        Quantity tightening,
        Quantity audit,
        Quantity rework,
        double reworkParts,
        double escape,
        Quantity sample,
        int lot) {

    private static final double SECONDS_PER_HOUR = 3600;

    /** Cost of so many seconds of labour. */
    public double labour(double seconds) {
        return perHour * seconds / SECONDS_PER_HOUR;
    }

    /** c_a, cost of one audit. */
    public double auditCost() {
        return labour(audit.si());
    }

    /** c_r, cost of one rework. */
    public double reworkCost() {
        return labour(rework.si()) + reworkParts;
    }

    /** Joints of a lot that a sampled audit checks: rounded up, at least one. */
    public int sampleSize() {
        return Math.max(1, (int) Math.ceil(sample.si() * lot - 1e-9));
    }
}
