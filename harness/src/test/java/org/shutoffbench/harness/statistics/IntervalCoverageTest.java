package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * How often intervals cover, over 10,000 simulated studies a cell (binomial by enumeration). Runs in the profile {@code
 * coverage} and writes {@code target/coverage.md}, whose rows stand in docs/validation.md.
 *
 * <p>Exact kinds: no cell significantly below 95 % (one-sided, Holm over the cells of a kind, 1 %). Approximate kinds: 95 +- 1
 * % on average over the grid; the minimum is reported.
 */
@EnabledIfSystemProperty(named = "coverageExperiments", matches = "true")
class IntervalCoverageTest {

    private static final int STUDIES = 10_000;
    private static final double LEVEL = 0.95;
    private static final List<String> ROWS = new ArrayList<>();

    private final SplittableRandom random = new SplittableRandom(20_250_101);
    private final Gaussians gaussians = new Gaussians(random);

    @AfterAll
    static void write() throws IOException {
        ROWS.sort(null);
        Files.createDirectories(Path.of("target"));
        Files.writeString(
                Path.of("target", "coverage.md"),
                "| interval | population | cells | average % | least % |\n|---|---|---|---|---|\n"
                        + String.join("", ROWS));
    }

    @Test
    void clopperPearsonByEnumeration() {
        double[] coverage = binomial(BinomialInterval.CLOPPER_PEARSON);
        report("Clopper-Pearson (exact)", "binomial, n 20-500", coverage);
        assertThat(Arrays.stream(coverage).min().orElse(0)).isGreaterThanOrEqualTo(LEVEL - 1e-12);
    }

    @Test
    void wilsonByEnumeration() {
        double[] coverage = binomial(BinomialInterval.WILSON);
        report("Wilson (approximate)", "binomial, n 20-500", coverage);
        assertThat(average(coverage)).isBetween(0.94, 0.96);
    }

    private static double[] binomial(BinomialInterval method) {
        List<Double> coverage = new ArrayList<>();
        for (int n : new int[] {20, 50, 200, 500}) {
            Interval[] intervals = new Interval[n + 1];
            for (int count = 0; count <= n; count++) {
                intervals[count] = method.of(count, n, LEVEL);
            }
            for (int i = 1; i < 200; i++) {
                double p = i / 200.0;
                BinomialDistribution law = BinomialDistribution.of(n, p);
                double sum = 0;
                for (int count = 0; count <= n; count++) {
                    sum += intervals[count].holds(p) ? law.probability(count) : 0;
                }
                coverage.add(sum);
            }
        }
        return coverage.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The exact test's size is at most 5 %, its mid-p version's near it; by enumeration over discordant pairs. */
    @Test
    void mcNemarKeepsItsSize() {
        List<Double> exact = new ArrayList<>();
        List<Double> mid = new ArrayList<>();
        for (int n : new int[] {50, 200, 500}) {
            for (double discordant : new double[] {0.02, 0.05, 0.1, 0.3, 0.6}) {
                BinomialDistribution pairs = BinomialDistribution.of(n, discordant);
                double exactSize = 0;
                double midSize = 0;
                for (int m = 0; m <= n; m++) {
                    BinomialDistribution split = BinomialDistribution.of(m, 0.5);
                    for (int b = 0; b <= m && pairs.probability(m) > 1e-12; b++) {
                        double weight = pairs.probability(m) * split.probability(b);
                        exactSize += McNemar.EXACT.p(b, m - b) <= 1 - LEVEL ? weight : 0;
                        midSize += McNemar.MID_P.p(b, m - b) <= 1 - LEVEL ? weight : 0;
                    }
                }
                exact.add(1 - exactSize);
                mid.add(1 - midSize);
            }
        }
        report("McNemar exact, 1 - size", "discordant 2-60 %, n 50-500", array(exact));
        report("McNemar mid-p, 1 - size", "discordant 2-60 %, n 50-500", array(mid));
        assertThat(exact).allMatch(c -> c >= LEVEL - 1e-9);
    }

    /** Score bounds stretched to agree with the exact test; by simulation over pairs of rates. */
    @Test
    void pairedDifferences() {
        List<Double> score = new ArrayList<>();
        List<Double> shown = new ArrayList<>();
        for (int n : new int[] {100, 500}) {
            for (double[] rates : new double[][] {{.05, .05}, {.1, .02}, {.2, .1}, {.3, .3}, {.02, .005}}) {
                int coveredByScore = 0;
                int coveredByShown = 0;
                double truth = rates[0] - rates[1];
                for (int study = 0; study < STUDIES; study++) {
                    int b = 0;
                    int c = 0;
                    for (int joint = 0; joint < n; joint++) {
                        double u = random.nextDouble();
                        b += u < rates[0] ? 1 : 0;
                        c += u >= rates[0] && u < rates[0] + rates[1] ? 1 : 0;
                    }
                    coveredByScore += PairedRateDifference.score(b, c, n, LEVEL).holds(truth) ? 1 : 0;
                    coveredByShown +=
                            PairedRateDifference.bounds(b, c, n, LEVEL).holds(truth) ? 1 : 0;
                }
                score.add((double) coveredByScore / STUDIES);
                shown.add((double) coveredByShown / STUDIES);
            }
        }
        report("Paired difference, score (approximate)", "rates 0.5-30 %, n 100, 500", array(score));
        report("Paired difference as shown", "rates 0.5-30 %, n 100, 500", array(shown));
        assertThat(average(array(score))).isBetween(0.94, 0.96);
    }

    /** Whatever the population: ranks depend on the count below the true point alone. */
    @Test
    void orderStatisticsOfAnyPopulation() {
        for (Population population : Population.values()) {
            List<Double> coverage = new ArrayList<>();
            for (double[] cell : new double[][] {{0.5, 50}, {0.5, 500}, {0.00135, 3000}, {0.99865, 3000}}) {
                double truth = population.quantile(cell[0]);
                QuantileRanks ranks = QuantileRanks.of((long) cell[1], cell[0], LEVEL);
                int covered = 0;
                for (int study = 0; study < STUDIES; study++) {
                    int below = 0;
                    for (int joint = 0; joint < cell[1]; joint++) {
                        below += population.value(random.nextDouble()) <= truth ? 1 : 0;
                    }
                    covered += ranks.lower() <= below && below < ranks.upper() ? 1 : 0;
                }
                coverage.add((double) covered / STUDIES);
            }
            report("Order statistics (exact)", population.title, array(coverage));
            assertNotSignificantlyBelow(array(coverage));
        }
    }

    @Test
    void toleranceIntervals() {
        for (Population population : Population.values()) {
            List<Double> free = new ArrayList<>();
            List<Double> normal = new ArrayList<>();
            for (int n : new int[] {93, 300}) {
                QuantileRanks ranks = FreeTolerance.ranks(n, 0.95, LEVEL);
                double factor = ToleranceFactor.EXACT.twoSided(n, 0.95, LEVEL);
                int freeHolds = 0;
                int normalHolds = 0;
                for (int study = 0; study < STUDIES; study++) {
                    double[] sorted = population.sample(n, random);
                    double mean = Arrays.stream(sorted).average().orElse(0);
                    double s = deviation(sorted, mean);
                    freeHolds +=
                            population.content(sorted[(int) ranks.lower() - 1], sorted[(int) ranks.upper() - 1]) >= 0.95
                                    ? 1
                                    : 0;
                    normalHolds += population.content(mean - factor * s, mean + factor * s) >= 0.95 ? 1 : 0;
                }
                free.add((double) freeHolds / STUDIES);
                normal.add((double) normalHolds / STUDIES);
            }
            report("Tolerance, distribution-free (exact)", population.title, array(free));
            report(
                    "Tolerance, normal factor" + (population == Population.NORMAL ? " (exact)" : ""),
                    population.title,
                    array(normal));
            assertNotSignificantlyBelow(array(free));
            if (population == Population.NORMAL) {
                assertNotSignificantlyBelow(array(normal));
            }
        }
    }

    @Test
    void meanAndStandardDeviation() {
        for (Population population : Population.values()) {
            List<Double> means = new ArrayList<>();
            List<Double> deviations = new ArrayList<>();
            for (int n : new int[] {20, 500}) {
                int mean = 0;
                int deviation = 0;
                for (int study = 0; study < STUDIES; study++) {
                    double[] sample = population.sample(n, random);
                    double centre = Arrays.stream(sample).average().orElse(0);
                    double s = deviation(sample, centre);
                    mean += NormalIntervals.mean(centre, s / Math.sqrt(n), n - 1.0, LEVEL)
                                    .holds(population.mean())
                            ? 1
                            : 0;
                    deviation += NormalIntervals.sigma(s, n, LEVEL).holds(population.deviation()) ? 1 : 0;
                }
                means.add((double) mean / STUDIES);
                deviations.add((double) deviation / STUDIES);
            }
            report("Mean, Student", population.title, array(means));
            report("Standard deviation, chi-square", population.title, array(deviations));
            if (population == Population.NORMAL) {
                assertNotSignificantlyBelow(array(means));
                assertNotSignificantlyBelow(array(deviations));
            }
        }
    }

    /** Few lots: a normal quantity with an effect of the lot; rates of joints above a limit, the mean, points, the spread. */
    @Test
    void fewLots() {
        Lots few = new Lots("8-50 lots of 25, 0-30 % between lots", new int[] {8, 20, 50});
        few.report();
        assertThat(average(array(few.means))).isBetween(0.94, 0.96);
        assertThat(average(array(few.rates))).isBetween(0.94, 0.96);
    }

    /** With two to five lots the interval of a rate is wider than it says on average; no cell may lie far below. */
    @Test
    void veryFewLots() {
        Lots few = new Lots("2-5 lots of 25, 0-30 % between lots", new int[] {2, 3, 5});
        few.report();
        assertThat(average(array(few.means))).isBetween(0.94, 0.96);
        assertThat(few.rates).allMatch(c -> c >= 0.94);
    }

    /** The cells of one range of lots. */
    private final class Lots {
        private static final int PER_LOT = 25;
        private static final double[] RATES = {0.01, 0.03, 0.1, 0.3, 0.5};

        private final String title;
        private final List<Double> rates = new ArrayList<>();
        private final List<Double> means = new ArrayList<>();
        private final List<Double> medians = new ArrayList<>();
        private final List<Double> tolerances = new ArrayList<>();
        private final List<Double> deviations = new ArrayList<>();
        private final List<Double> naive = new ArrayList<>();

        Lots(String title, int[] numbers) {
            this.title = title;
            for (int lots : numbers) {
                for (double shared : new double[] {0, 0.1, 0.3}) {
                    cell(lots, shared);
                }
            }
        }

        void report() {
            IntervalCoverageTest.report("Rate by cluster (approximate), rates 1-50 %", title, array(rates));
            IntervalCoverageTest.report("Mean by cluster (approximate)", title, array(means));
            IntervalCoverageTest.report("Median, joints by what they are worth", title, array(medians));
            IntervalCoverageTest.report(
                    "Tolerance, distribution-free, joints by what they are worth", title, array(tolerances));
            IntervalCoverageTest.report("Standard deviation, joints by what they are worth", title, array(deviations));
            IntervalCoverageTest.report("Clopper-Pearson as if independent, rates 1-50 %", title, array(naive));
        }

        private void cell(int lots, double shared) {
            long[] sizes = new long[lots];
            Arrays.fill(sizes, PER_LOT);
            int[] rate = new int[RATES.length];
            int[] asIfIndependent = new int[RATES.length];
            int[] other = new int[4];
            for (int study = 0; study < STUDIES; study++) {
                double[] values = values(lots, shared);
                for (int i = 0; i < RATES.length; i++) {
                    long[] counts = above(values, lots, StandardNormal.upperQuantile(RATES[i]));
                    long count = Arrays.stream(counts).sum();
                    rate[i] +=
                            holds(ClusterInterval.ofRate(counts, sizes, LEVEL).interval(), RATES[i]);
                    asIfIndependent[i] +=
                            holds(BinomialInterval.CLOPPER_PEARSON.of(count, values.length, LEVEL), RATES[i]);
                }
                quantity(values, sizes, other);
            }
            for (int i = 0; i < RATES.length; i++) {
                rates.add((double) rate[i] / STUDIES);
                naive.add((double) asIfIndependent[i] / STUDIES);
            }
            means.add((double) other[0] / STUDIES);
            medians.add((double) other[1] / STUDIES);
            tolerances.add((double) other[2] / STUDIES);
            deviations.add((double) other[3] / STUDIES);
        }

        /** As the summary of a study does it: independent joints by the design effect of the mean. */
        private void quantity(double[] values, long[] sizes, int[] covered) {
            int n = values.length;
            double centre = Arrays.stream(values).average().orElse(0);
            double s = deviation(values, centre);
            double[] sums = new double[sizes.length];
            for (int i = 0; i < n; i++) {
                sums[i / PER_LOT] += values[i];
            }
            ClusterInterval mean = ClusterInterval.ofMean(sums, sizes, s * s, LEVEL);
            long worth = Math.max(1, Math.min(n, (long) (n / Math.max(1, mean.designEffect()))));
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            Interval median =
                    between(sorted, QuantileRanks.of(worth, 0.5, LEVEL).stretched(worth, n));
            Interval tolerance =
                    between(sorted, FreeTolerance.ranks(worth, 0.95, LEVEL).stretched(worth, n));
            covered[0] += holds(mean.interval(), 0);
            covered[1] += holds(median, 0);
            covered[2] += StandardNormal.cdf(tolerance.high()) - StandardNormal.cdf(tolerance.low()) >= 0.95 ? 1 : 0;
            covered[3] += worth < 2 ? 1 : holds(NormalIntervals.sigma(s, worth, LEVEL), 1);
        }

        private double[] values(int lots, double shared) {
            double[] values = new double[lots * PER_LOT];
            double between = Math.sqrt(shared);
            double within = Math.sqrt(1 - shared);
            double effect = 0;
            for (int i = 0; i < values.length; i++) {
                effect = i % PER_LOT == 0 ? between * gaussians.next() : effect;
                values[i] = effect + within * gaussians.next();
            }
            return values;
        }

        private static long[] above(double[] values, int lots, double limit) {
            long[] counts = new long[lots];
            for (int i = 0; i < values.length; i++) {
                counts[i / PER_LOT] += values[i] > limit ? 1 : 0;
            }
            return counts;
        }

        private static Interval between(double[] sorted, QuantileRanks ranks) {
            return new Interval(
                    ranks.lower() < 1 ? Double.NEGATIVE_INFINITY : sorted[(int) ranks.lower() - 1],
                    ranks.upper() > sorted.length ? Double.POSITIVE_INFINITY : sorted[(int) ranks.upper() - 1]);
        }

        private static int holds(Interval interval, double truth) {
            return interval.holds(truth) ? 1 : 0;
        }
    }

    /** The whole sequence of 1,000 looks, one after each joint, misses the rate in at most 5 % of the studies. */
    @Test
    void confidenceSequences() {
        List<Double> coverage = new ArrayList<>();
        for (double rate : new double[] {0.01, 0.1, 0.5}) {
            int held = 0;
            int studies = 1000;
            for (int study = 0; study < studies; study++) {
                int count = 0;
                boolean holds = true;
                for (int n = 1; n <= 1000 && holds; n++) {
                    count += random.nextDouble() < rate ? 1 : 0;
                    holds = ConfidenceSequence.of(count, n, LEVEL).holds(rate);
                }
                held += holds ? 1 : 0;
            }
            coverage.add((double) held / studies);
        }
        report("Confidence sequence, 1,000 looks (1,000 studies)", "rates 1, 10, 50 %", array(coverage));
        assertThat(coverage).allMatch(c -> c >= LEVEL - 3 * Math.sqrt(0.05 * 0.95 / 1000));
    }

    private static void assertNotSignificantlyBelow(double[] coverage) {
        double[] p = Arrays.stream(coverage)
                .map(c -> BinomialDistribution.of(STUDIES, LEVEL).cumulativeProbability((int) Math.round(c * STUDIES)))
                .toArray();
        assertThat(Arrays.stream(Holm.adjust(p)).min().orElse(0)).isGreaterThanOrEqualTo(0.01);
    }

    private static void report(String interval, String population, double[] coverage) {
        ROWS.add(String.format(
                Locale.ROOT,
                "| %s | %s | %d | %.2f | %.2f |%n",
                interval,
                population,
                coverage.length,
                100 * average(coverage),
                100 * Arrays.stream(coverage).min().orElse(Double.NaN)));
    }

    private static double average(double[] values) {
        return Arrays.stream(values).average().orElse(Double.NaN);
    }

    private static double[] array(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double deviation(double[] values, double mean) {
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (values.length - 1));
    }

    /** Populations of a quantity with target 84. */
    private enum Population {
        NORMAL("normal") {
            @Override
            double value(double u) {
                return 84 + 4 * StandardNormal.quantile(u);
            }

            @Override
            double below(double x) {
                return StandardNormal.cdf((x - 84) / 4);
            }

            @Override
            double mean() {
                return 84;
            }

            @Override
            double deviation() {
                return 4;
            }
        },
        LOGNORMAL("lognormal, sigma 0.3") {
            @Override
            double value(double u) {
                return 84 * Math.exp(0.3 * StandardNormal.quantile(u));
            }

            @Override
            double below(double x) {
                return x <= 0 ? 0 : StandardNormal.cdf(Math.log(x / 84) / 0.3);
            }

            @Override
            double mean() {
                return 84 * Math.exp(0.045);
            }

            @Override
            double deviation() {
                return mean() * Math.sqrt(Math.expm1(0.09));
            }
        },
        MIXTURE("normal, 0.1 % misses at 5 to 10") {
            @Override
            double value(double u) {
                return u < 0.001 ? 5 + 5000 * u : NORMAL.value((u - 0.001) / 0.999);
            }

            @Override
            double below(double x) {
                double missed = Math.min(1, Math.max(0, (x - 5) / 5));
                return 0.001 * missed + 0.999 * NORMAL.below(x);
            }

            @Override
            double mean() {
                return 0.001 * 7.5 + 0.999 * 84;
            }

            @Override
            double deviation() {
                double within = 0.001 * (25.0 / 12) + 0.999 * 16;
                return Math.sqrt(within + 0.001 * 0.999 * (84 - 7.5) * (84 - 7.5));
            }
        };

        private final String title;

        Population(String title) {
            this.title = title;
        }

        abstract double value(double u);

        abstract double below(double x);

        abstract double mean();

        abstract double deviation();

        double quantile(double p) {
            return value(p);
        }

        double content(double low, double high) {
            return below(high) - below(low);
        }

        double[] sample(int n, SplittableRandom random) {
            double[] sample = new double[n];
            for (int i = 0; i < n; i++) {
                sample[i] = value(((random.nextLong() >>> 12) + 0.5) * 0x1p-52);
            }
            Arrays.sort(sample);
            return sample;
        }
    }
}
