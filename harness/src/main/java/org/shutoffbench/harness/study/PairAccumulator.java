package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.ExactPairMoments;

/** All that is kept of two strategies on the same joints of one family. */
final class PairAccumulator {

    private final PairTally inWindow;
    private final PairTally silentMiss;
    private final Map<Quantity, ExactPairMoments> moments = new EnumMap<>(Quantity.class);

    PairAccumulator(Family family) {
        List<Clustering> clusterings = new ArrayList<>(Clustering.of(family));
        inWindow = new PairTally(Event.IN_WINDOW, clusterings);
        silentMiss = new PairTally(Event.SILENT_MISS, clusterings);
        for (Quantity quantity : Quantity.values()) {
            moments.put(quantity, new ExactPairMoments(quantity.counted()));
        }
    }

    void add(TighteningRecord first, TighteningRecord second) {
        inWindow.add(first, second);
        silentMiss.add(first, second);
        moments.forEach((quantity, pairs) -> pairs.add(
                quantity.counted().steps(quantity.of(first)), quantity.counted().steps(quantity.of(second))));
    }

    void merge(PairAccumulator other) {
        inWindow.merge(other.inWindow);
        silentMiss.merge(other.silentMiss);
        moments.forEach((quantity, pairs) -> pairs.merge(other.moments(quantity)));
    }

    PairTally inWindow() {
        return inWindow;
    }

    PairTally silentMiss() {
        return silentMiss;
    }

    ExactPairMoments moments(Quantity quantity) {
        ExactPairMoments pairs = moments.get(quantity);
        if (pairs == null) {
            throw new IllegalStateException("no pairs of " + quantity.title());
        }
        return pairs;
    }
}
