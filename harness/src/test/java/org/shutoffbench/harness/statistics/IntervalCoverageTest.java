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
 * How often intervals cover, over 10,000 simulated studies a cell (binomial by enumeration). Runs with {@code
 * -DcoverageExperiments=true} and writes {@code target/coverage.md}, whose rows stand in docs/statistics.md.
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

    /** Few lots: a normal quantity with an effect of the lot; rates of joints above a limit, and the mean. */
    @Test
    void fewLots() {
        List<Double> rates = new ArrayList<>();
        List<Double> means = new ArrayList<>();
        List<Double> naive = new ArrayList<>();
        for (int lots : new int[] {8, 20, 50}) {
            for (double shared : new double[] {0, 0.1, 0.3}) {
                for (double rate : new double[] {0.1, 0.5}) {
                    double[] covered = clustered(lots, 25, shared, rate);
                    rates.add(covered[0]);
                    means.add(covered[1]);
                    naive.add(covered[2]);
                }
            }
        }
        report("Rate by cluster (approximate)", "8-50 lots of 25, 0-30 % between lots", array(rates));
        report("Mean by cluster", "8-50 lots of 25, 0-30 % between lots", array(means));
        report("Clopper-Pearson as if independent", "8-50 lots of 25, 0-30 % between lots", array(naive));
        assertThat(average(array(means))).isBetween(0.94, 0.96);
        assertThat(average(array(rates))).isBetween(0.94, 0.96);
    }

    private double[] clustered(int lots, int perLot, double shared, double rate) {
        double limit = StandardNormal.upperQuantile(rate);
        int[] covered = new int[3];
        int studies = STUDIES / 4;
        for (int study = 0; study < studies; study++) {
            long[] counts = new long[lots];
            long[] sizes = new long[lots];
            double[] sums = new double[lots];
            long count = 0;
            for (int lot = 0; lot < lots; lot++) {
                double effect = Math.sqrt(shared) * gaussians.next();
                for (int joint = 0; joint < perLot; joint++) {
                    double value = effect + Math.sqrt(1 - shared) * gaussians.next();
                    counts[lot] += value > limit ? 1 : 0;
                    sums[lot] += value;
                }
                sizes[lot] = perLot;
                count += counts[lot];
            }
            covered[0] +=
                    ClusterInterval.ofRate(counts, sizes, LEVEL).interval().holds(rate) ? 1 : 0;
            covered[1] +=
                    ClusterInterval.ofMean(sums, sizes, 1, LEVEL).interval().holds(0) ? 1 : 0;
            covered[2] += BinomialInterval.CLOPPER_PEARSON
                            .of(count, (long) lots * perLot, LEVEL)
                            .holds(rate)
                    ? 1
                    : 0;
        }
        return Arrays.stream(covered).mapToDouble(c -> (double) c / studies).toArray();
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
