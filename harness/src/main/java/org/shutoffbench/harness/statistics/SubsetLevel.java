package org.shutoffbench.harness.statistics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Samples of one level of a subset simulation, chain after chain. */
final class SubsetLevel {

    private static final double KEPT = 0.1;

    private final List<NormalPoint> points;
    private final double[] margins;
    private final int chainLength;

    SubsetLevel(List<NormalPoint> points, double[] margins, int chainLength) {
        this.points = points;
        this.margins = margins;
        this.chainLength = chainLength;
    }

    NormalPoint point(int i) {
        return points.get(i);
    }

    double margin(int i) {
        return margins[i];
    }

    /** The margin that a tenth of the samples do not exceed. */
    double quantile() {
        double[] sorted = margins.clone();
        Arrays.sort(sorted);
        return sorted[(int) (KEPT * sorted.length) - 1];
    }

    double share(double threshold) {
        return (double) within(threshold).length / margins.length;
    }

    int[] within(double threshold) {
        return IntStream.range(0, margins.length)
                .filter(i -> margins[i] <= threshold && margins[i] < Double.POSITIVE_INFINITY)
                .toArray();
    }

    List<NormalPoint> failures() {
        return Arrays.stream(within(0))
                .mapToObj(points::get)
                .distinct()
                .sorted(Comparator.comparingDouble(NormalPoint::squaredNorm))
                .toList();
    }

    /** (1 - p)/(p n) times one plus twice the correlation along the chains (source: Au2001, eq. 28-30). */
    double squaredVariation(double threshold) {
        double share = share(threshold);
        int chains = margins.length / chainLength;
        double correlated = 0;
        for (int lag = 1; lag < chainLength; lag++) {
            double products = 0;
            for (int chain = 0; chain < chains; chain++) {
                for (int at = 0; at + lag < chainLength; at++) {
                    int i = chain * chainLength + at;
                    products += margins[i] <= threshold && margins[i + lag] <= threshold ? 1 : 0;
                }
            }
            double covariance = products / (chains * (chainLength - lag)) - share * share;
            correlated += 2 * (1 - (double) lag / chainLength) * covariance / (share * (1 - share));
        }
        double gamma = share < 1 ? Math.max(0, correlated) : 0;
        return (1 - share) / (share * margins.length) * (1 + gamma);
    }
}
