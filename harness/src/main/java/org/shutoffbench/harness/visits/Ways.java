package org.shutoffbench.harness.visits;

import java.util.List;
import org.shutoffbench.harness.scenario.Costs;

/**
 * One pass, one pass and an audit of every joint, one pass and an audit of a sample; per joint of the job, families in equal
 * shares. A joint that the tool does not call done is put right at once, in each way alike.
 */
final class Ways {

    private final Costs costs;
    private final double toolSeconds;
    private final Bounded called;
    private final Bounded missed;
    private final Bounded rejected;
    private final Bounded escaped;

    /**
     * @param toolSeconds mean tool time of a joint, s
     * @param called share of joints that the tool calls done
     * @param missed of these, left low
     * @param rejected of these, rejected by the audit
     * @param escaped of these, left low after the audit
     */
    Ways(Costs costs, double toolSeconds, Bounded called, Bounded missed, Bounded rejected, Bounded escaped) {
        this.costs = costs;
        this.toolSeconds = toolSeconds;
        this.called = called;
        this.missed = missed;
        this.rejected = rejected;
        this.escaped = escaped;
    }

    List<Way> all() {
        return List.of(
                way("one pass", Bounded.exactly(0), missed),
                way("one pass, every joint audited", Bounded.exactly(1), escaped),
                way("one pass, a sample audited", audited(), leftBySample()));
    }

    private Way way(String title, Bounded audited, Bounded left) {
        Bounded audits = called.times(audited);
        Bounded rework = called.falling(r -> 1 - r).plus(audits.times(rejected));
        Bounded leftLow = called.times(left);
        Bounded seconds = Bounded.exactly(costs.tightening().si() + toolSeconds)
                .plus(audits.times(costs.audit().si()))
                .plus(rework.times(costs.rework().si()));
        Bounded cost = Bounded.exactly(costs.labour(costs.tightening().si() + toolSeconds))
                .plus(audits.times(costs.auditCost()))
                .plus(rework.times(costs.reworkCost()))
                .plus(leftLow.times(costs.escape()));
        return new Way(title, seconds, cost, rework, leftLow);
    }

    /** Share of the joints called done that a sampled audit checks: the sample, and the rest where it rejects one. */
    private Bounded audited() {
        double sampled = sampledShare();
        return rejected.rising(q -> sampled + (1 - sampled) * screened(q));
    }

    private Bounded leftBySample() {
        double sampled = sampledShare();
        Bounded screened = rejected.rising(this::screened);
        Bounded unscreened = rejected.falling(q -> 1 - screened(q));
        return escaped.times(sampled)
                .plus(escaped.times(screened).plus(missed.times(unscreened)).times(1 - sampled));
    }

    private double sampledShare() {
        return Math.min(1, (double) costs.sampleSize() / costs.lot());
    }

    /** Probability that a sample of joints that are each rejected with probability q rejects at least one. */
    private double screened(double q) {
        return 1 - StrictMath.pow(1 - q, costs.sampleSize());
    }

    /** Labour that leaving out the audit of every joint saves, s per joint. */
    Bounded savedSeconds() {
        return called.times(costs.audit().si())
                .plus(called.times(rejected).times(costs.rework().si()));
    }

    /** Joints that the audit would have caught: left low by one pass, not by one pass and an audit; per joint. */
    Bounded uncaught(Bounded caught) {
        return called.times(caught);
    }
}
