package org.shutoffbench.harness.audit;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.Grouping;

/** What audits of one strategy's joints of one family come to. */
public final class AuditTally {

    private static final EnumSet<Outcome> LEFT_LOW = EnumSet.of(Outcome.LOW, Outcome.UNSEATED);

    private final Map<FailureMode, Share> byMode = new EnumMap<>(FailureMode.class);
    private final Share called;
    private final Share missed;
    private final Share detected;
    private final Share falselyRejected;
    private final Share rejected;
    private final Share escaped;
    private final Share caught;
    private final Share leftLow;
    private final Share stillLow;
    private double toolSeconds;

    AuditTally(Grouping grouping) {
        for (FailureMode mode : FailureMode.values()) {
            byMode.put(mode, Share.counting(grouping));
        }
        called = Share.counting(grouping);
        missed = Share.counting(grouping);
        detected = Share.counting(grouping);
        falselyRejected = Share.counting(grouping);
        rejected = Share.counting(grouping);
        escaped = Share.counting(grouping);
        caught = Share.counting(grouping);
        leftLow = Share.counting(grouping);
        stillLow = Share.counting(grouping);
    }

    void add(TighteningRecord row, FailureMode mode, AuditResult audit) {
        byMode.computeIfPresent(mode, (key, share) -> {
            share.add(audit.isRejected(), row.lot(), row.tool());
            return share;
        });
        boolean done = row.verdict() == Verdict.REACHED;
        called.add(done, row.lot(), row.tool());
        toolSeconds += row.timeS();
        boolean low = LEFT_LOW.contains(row.outcome());
        leftLow.add(done && low, row.lot(), row.tool());
        stillLow.add(done && low && !audit.isRejected(), row.lot(), row.tool());
        if (done) {
            missed.add(low, row.lot(), row.tool());
            (low ? detected : falselyRejected).add(audit.isRejected(), row.lot(), row.tool());
            rejected.add(audit.isRejected(), row.lot(), row.tool());
            caught.add(low && audit.isRejected(), row.lot(), row.tool());
            escaped.add(low && !audit.isRejected(), row.lot(), row.tool());
        }
    }

    /** Joints in a mode, and how many of them the audit rejects, whatever the tool said. */
    public Share rejectedIn(FailureMode mode) {
        Share share = byMode.get(mode);
        if (share == null) {
            throw new IllegalStateException("no count of " + mode);
        }
        return share;
    }

    /** Joints run, and how many of them the tool calls done. */
    public Share called() {
        return called;
    }

    /** Of the joints called done, those that are low or unseated: p. */
    public Share missed() {
        return missed;
    }

    /** Of the joints called done that are low or unseated, those that the audit rejects: D. */
    public Share detected() {
        return detected;
    }

    /** Of the joints called done that are neither low nor unseated, those that the audit rejects: r. */
    public Share falselyRejected() {
        return falselyRejected;
    }

    /** Of the joints called done, those that the audit rejects. */
    public Share rejected() {
        return rejected;
    }

    /** Of the joints called done, those that are low or unseated and that the audit accepts. */
    public Share escaped() {
        return escaped;
    }

    /** Of the joints called done, those that are low or unseated and that the audit rejects. */
    public Share caught() {
        return caught;
    }

    /** Joints run, and how many of them are called done while low or unseated. */
    public Share leftLow() {
        return leftLow;
    }

    /** Joints run, and how many of them are called done while low or unseated and accepted by the audit. */
    public Share stillLow() {
        return stillLow;
    }

    /** Mean tool time of a joint, s. */
    public double toolSecondsPerJoint() {
        return called.n() == 0 ? 0 : toolSeconds / called.n();
    }
}
