package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.ClusterInterval;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.McNemar;
import org.shutoffbench.harness.statistics.PairedRateDifference;

/** Joints for which an event holds with both, one or none of two strategies. */
final class PairTally {

    private final Event event;
    private long n;
    private long onlyFirst;
    private long onlySecond;
    private long both;
    private final List<Groups> groups = new ArrayList<>();

    PairTally(Event event, List<Clustering> clusterings) {
        this.event = event;
        clusterings.forEach(clustering -> groups.add(new Groups(clustering)));
    }

    void add(TighteningRecord first, TighteningRecord second) {
        boolean withFirst = event.holds(first.outcome(), first.verdict());
        boolean withSecond = event.holds(second.outcome(), second.verdict());
        n++;
        onlyFirst += withFirst && !withSecond ? 1 : 0;
        onlySecond += withSecond && !withFirst ? 1 : 0;
        both += withFirst && withSecond ? 1 : 0;
        int difference = (withFirst ? 1 : 0) - (withSecond ? 1 : 0);
        groups.forEach(tally -> tally.add(first, difference));
    }

    void merge(PairTally other) {
        n += other.n;
        onlyFirst += other.onlyFirst;
        onlySecond += other.onlySecond;
        both += other.both;
        for (int i = 0; i < groups.size(); i++) {
            groups.get(i).merge(other.groups.get(i));
        }
    }

    long n() {
        return n;
    }

    long onlyFirst() {
        return onlyFirst;
    }

    long onlySecond() {
        return onlySecond;
    }

    long both() {
        return both;
    }

    double difference() {
        return (double) (onlyFirst - onlySecond) / n;
    }

    /** Bounds of the difference; by cluster too where joints share lots or tools, the wider one then. */
    Interval bounds(double confidence) {
        Interval bounds = PairedRateDifference.bounds(onlyFirst, onlySecond, n, confidence);
        for (Groups tally : groups) {
            Interval clustered = tally.bounds(variance(), confidence);
            bounds = new Interval(
                    Math.max(-1, Math.min(bounds.low(), clustered.low())),
                    Math.min(1, Math.max(bounds.high(), clustered.high())));
        }
        return bounds;
    }

    /** Exact McNemar test; where joints share lots or tools, the greatest of it and of the tests by cluster. */
    double p() {
        double p = McNemar.EXACT.p(onlyFirst, onlySecond);
        for (Groups tally : groups) {
            p = Math.max(p, tally.p(variance()));
        }
        return p;
    }

    private double variance() {
        double mean = difference();
        return (double) (onlyFirst + onlySecond) / n - mean * mean;
    }

    /** Sums of the difference by cluster. */
    private static final class Groups {
        private final Clustering clustering;
        private final long[] sums;
        private final long[] sizes;

        Groups(Clustering clustering) {
            this.clustering = clustering;
            this.sums = new long[clustering.groups()];
            this.sizes = new long[clustering.groups()];
        }

        void add(TighteningRecord tightening, int difference) {
            int group = clustering.groupOf(tightening);
            sums[group] += difference;
            sizes[group]++;
        }

        void merge(Groups other) {
            for (int i = 0; i < sums.length; i++) {
                sums[i] += other.sums[i];
                sizes[i] += other.sizes[i];
            }
        }

        Interval bounds(double variance, double confidence) {
            return ClusterInterval.ofMean(values(), sizes, variance, confidence).interval();
        }

        /** Student's test of no difference on the clusters. */
        double p(double variance) {
            long clusters =
                    java.util.Arrays.stream(sizes).filter(size -> size > 0).count();
            if (clusters < 2) {
                return 1;
            }
            ClusterInterval half = ClusterInterval.ofMean(values(), sizes, variance, 0.5);
            TDistribution student = TDistribution.of(clusters - 1.0);
            double error = half.interval().width() / 2 / student.inverseSurvivalProbability(0.25);
            if (error == 0) {
                return half.estimate() == 0 ? 1 : 0;
            }
            return Math.min(1, 2 * student.survivalProbability(Math.abs(half.estimate()) / error));
        }

        private double[] values() {
            double[] values = new double[sums.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = (double) sums[i];
            }
            return values;
        }
    }
}
