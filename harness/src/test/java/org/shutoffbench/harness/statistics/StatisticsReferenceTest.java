package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every row of {@code statistics.csv}, recomputed by R with the script beside it; the file states source and tolerance. */
class StatisticsReferenceTest {

    private static final double[] X = {1.2, 2.3, 2.9, 4.1, 5.6, 5.9, 7.3, 8.8};
    private static final double[] Y = {2.1, 1.9, 3.7, 4.4, 4.9, 6.8, 6.1, 9.0};
    private static final double[] HOLM = Holm.adjust(new double[] {.01, .04, .03, .005, .2});
    private static final double[][] BLOCKS = {{.98, .97, .60}, {.99, .99, .10}, {.95, .90, .90}, {.88, .89, .02}};
    private static final double[] NESTED = {10.1, 10.4, 11.0, 11.3, 14.2, 13.9, 12.8, 13.0, 9.1, 9.6, 8.7, 8.2};
    private static final long[] COUNTS = {3, 0, 7, 2, 1, 9};
    private static final long[] LEVEL_COUNTS = {4, 4, 5, 4, 3, 5};
    private static final long[] SIZES = {40, 40, 50, 40, 30, 50};
    private static final double[] SUMS = {400.2, 395.1, 520, 402.5, 301, 489};

    @TestFactory
    Stream<DynamicTest> everyRow() {
        return ReferenceRows.of("statistics.csv").stream()
                .map(row -> DynamicTest.dynamicTest(String.join(" ", row), () -> {
                    double[] numbers = ReferenceRows.numbers(row, 1);
                    double expected = numbers[numbers.length - 1];
                    double[] arguments = Arrays.copyOf(numbers, numbers.length - 1);
                    double tolerance = integratedOrOptimised(row[0]) ? 1e-6 : 1e-9;
                    assertThat(ours(row[0], arguments))
                            .isCloseTo(expected, within(tolerance * Math.max(Math.abs(expected), 1e-3)));
                }));
    }

    private static boolean integratedOrOptimised(String what) {
        return what.equals("exact factor") || what.startsWith("paired") || what.equals("one-sided factor");
    }

    private static double ours(String what, double[] x) {
        return switch (what) {
            case "clopper-pearson low" ->
                rate(BinomialInterval.CLOPPER_PEARSON, x).low();
            case "clopper-pearson high" ->
                rate(BinomialInterval.CLOPPER_PEARSON, x).high();
            case "wilson low" -> rate(BinomialInterval.WILSON, x).low();
            case "wilson high" -> rate(BinomialInterval.WILSON, x).high();
            case "noncentral t" -> NoncentralT.of(x[1], x[2]).cdf(x[0]);
            case "one-sided factor" -> ToleranceFactor.oneSided((long) x[0], x[1], x[2]);
            case "exact factor" -> ToleranceFactor.EXACT.twoSided((long) x[0], x[1], x[2]);
            case "howe factor" -> ToleranceFactor.HOWE.twoSided((long) x[0], x[1], x[2]);
            case "sigma low" -> NormalIntervals.sigma(x[0], (long) x[1], x[2]).low();
            case "sigma high" -> NormalIntervals.sigma(x[0], (long) x[1], x[2]).high();
            case "mean high" -> NormalIntervals.mean(x[0], x[1], x[2], x[3]).high();
            case "lower rank" -> QuantileRanks.of((long) x[0], x[1], x[2]).lower();
            case "upper rank" -> QuantileRanks.of((long) x[0], x[1], x[2]).upper();
            case "least sample" -> FreeTolerance.leastSample((int) x[0], x[1], x[2]);
            case "mcnemar exact" -> McNemar.EXACT.p((long) x[0], (long) x[1]);
            case "mcnemar mid-p" -> McNemar.MID_P.p((long) x[0], (long) x[1]);
            case "paired low" -> paired(x).low();
            case "paired high" -> paired(x).high();
            case "holm" -> HOLM[(int) x[0]];
            case "friedman statistic" -> Friedman.of(BLOCKS).statistic();
            case "friedman exact p" -> Friedman.of(BLOCKS).p();
            case "friedman chi-square p" -> Friedman.of(BLOCKS).chiSquareP();
            case "correlation" -> correlation();
            case "correlation low" ->
                NormalIntervals.correlation(x[0], (long) x[1], x[2]).low();
            case "correlation high" ->
                NormalIntervals.correlation(x[0], (long) x[1], x[2]).high();
            case "lag-1" -> Autocorrelation.lag1(x[0] == 1 ? X : Y);
            case "variance lot" -> nested().lot();
            case "variance piece" -> nested().piece();
            case "variance repeat" -> nested().repeat();
            case "bissell" -> CapabilityIndex.bissellLowerBound(x[0], (long) x[1], x[2]);
            case "obrien-fleming" -> AlphaSpending.OBRIEN_FLEMING.spent(x[0], x[1]);
            case "pocock" -> AlphaSpending.POCOCK.spent(x[0], x[1]);
            case "sequence low" ->
                ConfidenceSequence.of((long) x[0], (long) x[1], x[2]).low();
            case "sequence high" ->
                ConfidenceSequence.of((long) x[0], (long) x[1], x[2]).high();
            case "kim-nelson eta" -> KimNelson.eta((int) x[0], (int) x[1], x[2]);
            case "kim-nelson h2" -> KimNelson.hSquared((int) x[0], (int) x[1], x[2]);
            case "cluster effect" -> clusters(COUNTS).designEffect();
            case "cluster low" -> clusters(COUNTS).interval().low();
            case "cluster high" -> clusters(COUNTS).interval().high();
            case "level cluster effect" -> clusters(LEVEL_COUNTS).designEffect();
            case "level cluster low" -> clusters(LEVEL_COUNTS).interval().low();
            case "level cluster high" -> clusters(LEVEL_COUNTS).interval().high();
            case "no failure cluster high" -> clusters(new long[6]).interval().high();
            case "cluster mean high" ->
                ClusterInterval.ofMean(SUMS, SIZES, 1, 0.95).interval().high();
            default -> throw new IllegalArgumentException("no method for " + what);
        };
    }

    private static Interval rate(BinomialInterval method, double[] x) {
        return method.of((long) x[0], (long) x[1], x[2]);
    }

    private static ClusterInterval clusters(long[] counts) {
        return ClusterInterval.ofRate(counts, SIZES, 0.95);
    }

    private static Interval paired(double[] x) {
        return PairedRateDifference.score((long) x[0], (long) x[1], (long) x[2], x[3]);
    }

    private static VarianceComponents nested() {
        int[] lots = new int[NESTED.length];
        int[] pieces = new int[NESTED.length];
        for (int i = 0; i < NESTED.length; i++) {
            lots[i] = i / 4;
            pieces[i] = i / 2;
        }
        return VarianceComponents.of(NESTED, lots, pieces);
    }

    private static double correlation() {
        FixedPoint tenths = new FixedPoint(10);
        ExactPairMoments pairs = new ExactPairMoments(tenths);
        for (int i = 0; i < X.length; i++) {
            pairs.add(tenths.steps(X[i]), tenths.steps(Y[i]));
        }
        return pairs.correlation();
    }
}
