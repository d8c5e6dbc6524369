package org.shutoffbench.harness.visits;

import org.shutoffbench.harness.audit.AuditTally;

/**
 * The question for one family.
 *
 * @param family name
 * @param joints joints run
 * @param called joints that the tool calls done
 * @param missed p, of the joints called done those left low or unseated
 * @param detection D, of those the ones that the audit rejects
 * @param falseRejection r, of the other joints called done those that the audit rejects
 * @param escaped of the joints called done those left low or unseated after the audit
 * @param threshold p*
 * @param perfect p* where D is 1: of an audit that finds every joint left low
 * @param answer whether the audit can be left out
 * @param moreJoints how many more clean joints would answer "defensible"; 0 where it is so already or never
 */
public record FamilyVisits(
        String family,
        long joints,
        long called,
        Bounded missed,
        Bounded detection,
        Bounded falseRejection,
        Bounded escaped,
        Bounded threshold,
        Bounded perfect,
        Answer answer,
        long moreJoints) {

    static FamilyVisits of(String family, AuditTally tally, Threshold costs, double confidence) {
        Bounded missed = Bounded.of(tally.missed(), confidence);
        Bounded detection = Bounded.of(tally.detected(), confidence);
        Bounded falseRejection = Bounded.of(tally.falselyRejected(), confidence);
        Bounded threshold = costs.of(detection, falseRejection);
        Bounded perfect = costs.of(Bounded.exactly(1), falseRejection);
        Answer answer = Answer.of(missed, threshold, perfect);
        return new FamilyVisits(
                family,
                tally.called().n(),
                tally.called().count(),
                missed,
                detection,
                falseRejection,
                Bounded.of(tally.escaped(), confidence),
                threshold,
                perfect,
                answer,
                answer == Answer.NOT_YET ? CleanJoints.needed(tally.missed(), threshold.low(), confidence) : 0);
    }

    /** Whether the audit as it is surely pays. */
    public boolean auditPays() {
        return missed.low() > threshold.high();
    }
}
