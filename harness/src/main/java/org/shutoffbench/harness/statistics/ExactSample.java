package org.shutoffbench.harness.statistics;

import java.util.Arrays;

/**
 * One quantity over many joints in bounded memory, mergeable and exact to the step of its fixed point.
 *
 * <p>Up to {@value #KEPT} joints every value is kept and order statistics are exact; beyond, order statistics lie in
 * classes of {@link OctaveHistogram} and their bounds are rounded outwards to the class edges. Which of the two holds
 * depends on the joints seen and on nothing else. Negative values count as 0 in order statistics.
 */
public final class ExactSample {

    /** Joint numbers below this have their values kept. */
    public static final int KEPT = 8192;

    private static final long ABSENT = Long.MIN_VALUE;

    private final FixedPoint point;
    private final ExactMoments moments;
    private final OctaveHistogram histogram = new OctaveHistogram();
    private long[] kept = new long[0];
    private int keptCount;
    private long least = Long.MAX_VALUE;
    private long greatest = Long.MIN_VALUE;

    /** Of a quantity in steps of a fixed point. */
    public ExactSample(FixedPoint point) {
        this.point = point;
        this.moments = new ExactMoments(point);
    }

    /**
     * Adds the value of a joint.
     *
     * @param joint joint number, from 0; none may come twice
     * @param value in the quantity's unit
     */
    public void add(int joint, double value) {
        long steps = point.steps(value);
        requireNew(joint);
        moments.add(steps);
        histogram.add(steps);
        least = Math.min(least, steps);
        greatest = Math.max(greatest, steps);
        if (joint < KEPT) {
            keep(joint, steps);
        }
    }

    /** Adds all that another has seen. */
    public void merge(ExactSample other) {
        moments.merge(other.moments);
        histogram.merge(other.histogram);
        least = Math.min(least, other.least);
        greatest = Math.max(greatest, other.greatest);
        for (int joint = 0; joint < other.kept.length; joint++) {
            if (other.kept[joint] != ABSENT) {
                keep(joint, other.kept[joint]);
            }
        }
    }

    private void keep(int joint, long steps) {
        if (joint >= kept.length) {
            int from = kept.length;
            kept = Arrays.copyOf(kept, Math.min(KEPT, Math.max(joint + 1, 2 * from)));
            Arrays.fill(kept, from, kept.length, ABSENT);
        }
        requireNew(joint);
        kept[joint] = steps;
        keptCount++;
    }

    private void requireNew(int joint) {
        if (joint < kept.length && kept[joint] != ABSENT) {
            throw new IllegalArgumentException("joint " + joint + " was added twice");
        }
    }

    /** Number of joints. */
    public long n() {
        return moments.n();
    }

    /** Mean and standard deviation. */
    public ExactMoments moments() {
        return moments;
    }

    /** Least value, NaN without joints. */
    public double least() {
        return n() == 0 ? Double.NaN : point.value(least);
    }

    /** Greatest value, NaN without joints. */
    public double greatest() {
        return n() == 0 ? Double.NaN : point.value(greatest);
    }

    /** The kept values in the order of joint numbers, NaN where a joint did not run. */
    public double[] keptByJoint() {
        double[] values = new double[kept.length];
        for (int joint = 0; joint < values.length; joint++) {
            values[joint] = kept[joint] == ABSENT ? Double.NaN : point.value(kept[joint]);
        }
        return values;
    }

    /** Order statistics of what was added up to now. */
    public OrderStatistics orderStatistics() {
        if (n() == 0) {
            throw new IllegalStateException("no joint was added");
        }
        if (keptCount == n()) {
            long[] sorted = Arrays.stream(kept)
                    .filter(steps -> steps != ABSENT)
                    .sorted()
                    .toArray();
            return OrderStatistics.ofSorted(sorted, point);
        }
        return OrderStatistics.ofHistogram(histogram, point, least, greatest);
    }
}
