package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.harness.statistics.ExactPairMoments;
import org.shutoffbench.harness.statistics.Holm;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.McNemar;
import org.shutoffbench.harness.statistics.NormalIntervals;

/** Turns pairs of strategies on common joints into comparisons. */
final class ComparisonReport {

    private final Methods methods;
    private final List<Pair> pairs;

    /** Two strategies on one family with what was kept of them. */
    record Pair(int family, int first, int second, PairAccumulator kept) {}

    ComparisonReport(Methods methods, List<Pair> pairs) {
        this.methods = methods;
        this.pairs = pairs;
    }

    List<PairedComparison> summarise() {
        double[] inWindow = Holm.adjust(
                pairs.stream().mapToDouble(pair -> pair.kept().inWindow().p()).toArray());
        double[] silentMiss = Holm.adjust(
                pairs.stream().mapToDouble(pair -> pair.kept().silentMiss().p()).toArray());
        List<PairedComparison> comparisons = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            Pair pair = pairs.get(i);
            comparisons.add(new PairedComparison(
                    pair.family(),
                    pair.first(),
                    pair.second(),
                    pair.kept().inWindow().n(),
                    rates(pair.kept().inWindow(), inWindow[i]),
                    rates(pair.kept().silentMiss(), silentMiss[i]),
                    means(pair.kept().moments(Quantity.CLAMPING_TORQUE)),
                    means(pair.kept().moments(Quantity.CLAMP_FORCE))));
        }
        return comparisons;
    }

    private PairedComparison.PairedRates rates(PairTally tally, double pHolm) {
        Interval bounds = tally.bounds(methods.confidence());
        return new PairedComparison.PairedRates(
                tally.onlyFirst(),
                tally.onlySecond(),
                tally.both(),
                tally.difference(),
                bounds.low(),
                bounds.high(),
                McNemar.EXACT.p(tally.onlyFirst(), tally.onlySecond()),
                McNemar.MID_P.p(tally.onlyFirst(), tally.onlySecond()),
                pHolm);
    }

    private PairedComparison.PairedMeans means(ExactPairMoments moments) {
        long n = moments.difference().n();
        double mean = moments.difference().mean();
        if (n < 2) {
            return new PairedComparison.PairedMeans(new Estimate(mean, null, null), Estimate.NONE);
        }
        double standardError = moments.difference().standardDeviation() / Math.sqrt((double) n);
        Interval interval = NormalIntervals.mean(mean, standardError, n - 1.0, methods.confidence());
        double r = moments.correlation();
        Estimate correlation = Double.isNaN(r) || n < 4
                ? new Estimate(QuantityReport.finite(r), null, null)
                : QuantityReport.estimate(r, NormalIntervals.correlation(r, n, methods.confidence()));
        return new PairedComparison.PairedMeans(QuantityReport.estimate(mean, interval), correlation);
    }
}
