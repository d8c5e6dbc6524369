package org.shutoffbench.harness.statistics;

import java.util.ArrayList;
import java.util.List;

/** A sample in ascending order: ranks, percentage points, cumulative share. */
public final class OrderStatistics {

    private final FixedPoint point;
    private final List<OctaveHistogram.Bin> bins;
    private final long[] cumulative;

    private OrderStatistics(List<OctaveHistogram.Bin> bins, FixedPoint point) {
        this.point = point;
        this.bins = bins;
        this.cumulative = new long[bins.size()];
        long sum = 0;
        for (int i = 0; i < cumulative.length; i++) {
            sum += bins.get(i).count();
            cumulative[i] = sum;
        }
    }

    static OrderStatistics ofSorted(long[] sorted, FixedPoint point) {
        List<OctaveHistogram.Bin> bins = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= sorted.length; i++) {
            if (i == sorted.length || sorted[i] != sorted[from]) {
                bins.add(new OctaveHistogram.Bin(sorted[from], sorted[from], i - from));
                from = i;
            }
        }
        return new OrderStatistics(bins, point);
    }

    /** The outermost classes are cut back to the least and the greatest value seen. */
    static OrderStatistics ofHistogram(OctaveHistogram histogram, FixedPoint point, long least, long greatest) {
        List<OctaveHistogram.Bin> bins = new ArrayList<>();
        histogram.forEach((bin, ignored) -> bins.add(new OctaveHistogram.Bin(
                Math.max(bin.least(), least), Math.min(bin.greatest(), Math.max(greatest, bin.least())), bin.count())));
        return new OrderStatistics(bins, point);
    }

    /** Sample size. */
    public long n() {
        return cumulative[cumulative.length - 1];
    }

    /**
     * Bounds of an order statistic: one value where the values are known, the edges of its class else.
     *
     * @param rank 1 to n
     */
    public Interval ofRank(long rank) {
        OctaveHistogram.Bin bin = bins.get(binOf(rank));
        return new Interval(point.value(bin.least()), point.value(bin.greatest()));
    }

    /**
     * A percentage point by linear interpolation between order statistics, (n - 1) p + 1 being its rank.
     *
     * @param p in [0, 1]
     */
    public double quantile(double p) {
        double rank = (n() - 1) * p + 1;
        long below = Math.min(n(), (long) Math.floor(rank));
        double low = stepsOf(below);
        double high = below == n() ? low : stepsOf(below + 1);
        return point.value(low + (rank - below) * (high - low));
    }

    /** Within a class the values are taken as evenly spread. */
    private double stepsOf(long rank) {
        int place = binOf(rank);
        OctaveHistogram.Bin bin = bins.get(place);
        double before = cumulative[place] - bin.count();
        double width = bin.greatest() - bin.least();
        return bin.least() + width * (rank - before - 0.5) / bin.count();
    }

    private int binOf(long rank) {
        if (rank < 1 || rank > n()) {
            throw new IllegalArgumentException("rank " + rank + " of " + n());
        }
        int low = 0;
        int high = cumulative.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (cumulative[middle] < rank) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * The cumulative share at some of the values: the first, the last, and enough between to draw it.
     *
     * @param steps steps of the share between two values, at least 1
     */
    public List<CumulativeShare> cumulativeShare(int steps) {
        List<CumulativeShare> drawn = new ArrayList<>();
        long next = 1;
        for (int i = 0; i < cumulative.length; i++) {
            if (i == 0 || i == cumulative.length - 1 || cumulative[i] * steps >= next * n()) {
                drawn.add(new CumulativeShare(point.value(bins.get(i).greatest()), (double) cumulative[i] / n()));
                next = cumulative[i] * steps / n() + 1;
            }
        }
        return drawn;
    }

    /**
     * A point of the cumulative share.
     *
     * @param value of the quantity
     * @param share at or below it, 0 to 1
     */
    public record CumulativeShare(double value, double share) {}
}
