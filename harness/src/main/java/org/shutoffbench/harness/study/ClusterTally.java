package org.shutoffbench.harness.study;

import java.util.EnumMap;
import java.util.Map;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.ClusterInterval;
import org.shutoffbench.harness.statistics.FixedPoint;

/** Counts and sums of one cell by cluster. */
final class ClusterTally {

    private final Clustering clustering;
    private final long[] sizes;
    private final Map<Event, long[]> counts = new EnumMap<>(Event.class);
    private final Map<Quantity, long[]> sums = new EnumMap<>(Quantity.class);

    ClusterTally(Clustering clustering) {
        this.clustering = clustering;
        this.sizes = new long[clustering.groups()];
        for (Event event : Event.values()) {
            counts.put(event, new long[clustering.groups()]);
        }
        for (Quantity quantity : Quantity.values()) {
            sums.put(quantity, new long[clustering.groups()]);
        }
    }

    String title() {
        return clustering.kind().title();
    }

    void add(TighteningRecord tightening) {
        int group = clustering.groupOf(tightening);
        sizes[group]++;
        counts.forEach(
                (event, byGroup) -> byGroup[group] += event.holds(tightening.outcome(), tightening.verdict()) ? 1 : 0);
        sums.forEach((quantity, byGroup) -> byGroup[group] += quantity.counted().steps(quantity.of(tightening)));
    }

    void merge(ClusterTally other) {
        addAll(sizes, other.sizes);
        counts.forEach((event, byGroup) -> addAll(byGroup, other.counts(event)));
        sums.forEach((quantity, byGroup) -> addAll(byGroup, other.sums(quantity)));
    }

    private static void addAll(long[] ours, long[] theirs) {
        for (int group = 0; group < ours.length; group++) {
            ours[group] += theirs[group];
        }
    }

    ClusterInterval rate(Event event, double confidence) {
        return ClusterInterval.ofRate(counts(event), sizes, confidence);
    }

    ClusterInterval mean(Quantity quantity, double variance, double confidence) {
        FixedPoint point = quantity.counted();
        long[] byGroup = sums(quantity);
        double[] values = new double[byGroup.length];
        for (int group = 0; group < values.length; group++) {
            values[group] = point.value(byGroup[group]);
        }
        return ClusterInterval.ofMean(values, sizes, variance, confidence);
    }

    private long[] counts(Event event) {
        return counts.getOrDefault(event, new long[sizes.length]);
    }

    private long[] sums(Quantity quantity) {
        return sums.getOrDefault(quantity, new long[sizes.length]);
    }
}
