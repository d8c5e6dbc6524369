package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;

/** Joints counted by outcome, verdict and end reason. */
final class OutcomeTally {

    private final Map<Outcome, Map<Verdict, Map<EndReason, Long>>> counts = new EnumMap<>(Outcome.class);

    void add(TighteningRecord tightening) {
        add(tightening.outcome(), tightening.verdict(), tightening.endReason(), 1);
    }

    void merge(OutcomeTally other) {
        other.summarise().forEach(count -> add(count.outcome(), count.verdict(), count.endReason(), count.joints()));
    }

    private void add(Outcome outcome, Verdict verdict, EndReason reason, long joints) {
        counts.computeIfAbsent(outcome, key -> new EnumMap<>(Verdict.class))
                .computeIfAbsent(verdict, key -> new EnumMap<>(EndReason.class))
                .merge(reason, joints, Long::sum);
    }

    long count(Event event) {
        long sum = 0;
        for (CellSummary.Count count : summarise()) {
            sum += event.holds(count.outcome(), count.verdict()) ? count.joints() : 0;
        }
        return sum;
    }

    /** The combinations that occurred, in the order of the enumerations. */
    List<CellSummary.Count> summarise() {
        List<CellSummary.Count> found = new ArrayList<>();
        counts.forEach((outcome, byVerdict) -> byVerdict.forEach((verdict, byReason) -> byReason.forEach(
                (reason, joints) -> found.add(new CellSummary.Count(outcome, verdict, reason, joints)))));
        return found;
    }
}
