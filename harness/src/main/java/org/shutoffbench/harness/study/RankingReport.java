package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.statistics.Friedman;
import org.shutoffbench.harness.statistics.Holm;
import org.shutoffbench.harness.statistics.Interval;

/**
 * Ranks strategies by the in-window rate of their worst family.
 *
 * <p>Two strategies are told apart by their paired differences on the worst family of each: at least one of them must be
 * decided by Holm's procedure over all pairs of the study, and none the other way round. A rank interval runs from one
 * more than the number of strategies that are better for sure to the number that are not worse for sure.
 */
final class RankingReport {

    private final StudyAccumulator study;
    private final StudyPlan plan;
    private final double confidence;

    RankingReport(StudyAccumulator study) {
        this.study = study;
        this.plan = study.plan();
        this.confidence = plan.methods().confidence();
    }

    Ranking summarise() {
        List<Ranking.Standing> order = order();
        List<Ranking.WorstFamilyDifference> differences = differences(order);
        List<Ranking.Standing> standings = new ArrayList<>();
        for (Ranking.Standing standing : order) {
            standings.add(withRanks(standing, order.size(), differences));
        }
        return new Ranking(standings, differences, friedman());
    }

    private List<Ranking.Standing> order() {
        return IntStream.range(0, plan.strategies().size())
                .mapToObj(this::standing)
                .sorted(Comparator.comparing((Ranking.Standing standing) -> !standing.everyFamily())
                        .thenComparingDouble(RankingReport::missed)
                        .thenComparingInt(Ranking.Standing::strategy))
                .toList();
    }

    private static double missed(Ranking.Standing standing) {
        Rate rate = standing.inWindow();
        return rate == null ? 2 : 1 - rate.estimate();
    }

    private Ranking.Standing standing(int strategy) {
        int worst = -1;
        double least = 2;
        boolean everywhere = true;
        for (int family = 0; family < plan.families().size(); family++) {
            CellAccumulator cell = study.cell(family, strategy);
            if (cell.run() == 0) {
                everywhere = false;
                continue;
            }
            double rate = share(cell);
            if (rate < least) {
                least = rate;
                worst = family;
            }
        }
        Rate rate = worst < 0 ? null : RatesReport.rate(study.cell(worst, strategy), Event.IN_WINDOW, plan.methods());
        return new Ranking.Standing(strategy, worst, rate, everywhere, 0, 0);
    }

    private static double share(CellAccumulator cell) {
        return (double) cell.count(Event.IN_WINDOW) / cell.run();
    }

    /** Every pair that ran on every family, higher standing first, on the worst family of each. */
    private List<Ranking.WorstFamilyDifference> differences(List<Ranking.Standing> order) {
        List<Candidate> candidates = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            for (int j = i + 1; j < order.size(); j++) {
                if (order.get(i).everyFamily() && order.get(j).everyFamily()) {
                    addCandidates(order.get(i), order.get(j), candidates);
                }
            }
        }
        double[] raw = candidates.stream().mapToDouble(Candidate::p).toArray();
        double[] adjusted = Holm.adjust(raw);
        List<Ranking.WorstFamilyDifference> differences = new ArrayList<>();
        for (int i = 0; i < raw.length; i++) {
            differences.add(candidates.get(i).difference(adjusted[i], levelOf(i, raw)));
        }
        return differences;
    }

    private void addCandidates(Ranking.Standing higher, Ranking.Standing lower, List<Candidate> candidates) {
        Set<Integer> families = new LinkedHashSet<>(List.of(lower.worstFamily(), higher.worstFamily()));
        for (int family : families) {
            PairAccumulator kept = study.pair(family, higher.strategy(), lower.strategy());
            if (kept.inWindow().n() > 0) {
                boolean turned = higher.strategy() > lower.strategy();
                candidates.add(new Candidate(
                        family, higher.strategy(), lower.strategy(), kept.inWindow(), turned, confidence));
            }
        }
    }

    /** The error that Holm's procedure leaves to one test: alpha over the tests not yet decided at its place. */
    private double levelOf(int test, double[] raw) {
        int smaller = 0;
        for (int i = 0; i < raw.length; i++) {
            smaller += raw[i] < raw[test] || (raw[i] == raw[test] && i < test) ? 1 : 0;
        }
        return (1 - confidence) / (raw.length - smaller);
    }

    /** A pair on a family; {@code turned} where the pair is kept the other way round. */
    private record Candidate(int family, int first, int second, PairTally kept, boolean turned, double confidence) {

        double p() {
            return kept.p();
        }

        Ranking.WorstFamilyDifference difference(double pHolm, double level) {
            Interval bounds = kept.bounds(1 - level);
            boolean decided = pHolm <= 1 - confidence && !bounds.holds(0);
            double low = turned ? -bounds.high() : bounds.low();
            double high = turned ? -bounds.low() : bounds.high();
            double difference = turned ? -kept.difference() : kept.difference();
            return new Ranking.WorstFamilyDifference(
                    family, first, second, kept.n(), difference + 0.0, low + 0.0, high + 0.0, pHolm, decided);
        }
    }

    private static Ranking.Standing withRanks(
            Ranking.Standing standing, int strategies, List<Ranking.WorstFamilyDifference> differences) {
        int better = 0;
        int worse = 0;
        for (int other = 0; standing.everyFamily() && other < strategies; other++) {
            better += sign(other, standing.strategy(), differences) > 0 ? 1 : 0;
            worse += sign(standing.strategy(), other, differences) > 0 ? 1 : 0;
        }
        return new Ranking.Standing(
                standing.strategy(),
                standing.worstFamily(),
                standing.inWindow(),
                standing.everyFamily(),
                1 + better,
                strategies - worse);
    }

    /** +1 where the first is better for sure, -1 where the second is, 0 where they cannot be told apart. */
    static int sign(int first, int second, List<Ranking.WorstFamilyDifference> differences) {
        int forFirst = 0;
        int forSecond = 0;
        for (Ranking.WorstFamilyDifference difference : differences) {
            boolean same = difference.first() == first && difference.second() == second;
            boolean turned = difference.first() == second && difference.second() == first;
            if (difference.decided() && (same || turned)) {
                boolean firstBetter = (difference.difference() > 0) == same;
                forFirst += firstBetter ? 1 : 0;
                forSecond += firstBetter ? 0 : 1;
            }
        }
        return forFirst > 0 && forSecond == 0 ? 1 : forSecond > 0 && forFirst == 0 ? -1 : 0;
    }

    private Ranking.@Nullable Friedman friedman() {
        int[] everywhere = IntStream.range(0, plan.strategies().size())
                .filter(strategy -> standing(strategy).everyFamily())
                .toArray();
        if (everywhere.length < 2 || plan.families().size() < 2) {
            return null;
        }
        double[][] rates = new double[plan.families().size()][everywhere.length];
        for (int family = 0; family < rates.length; family++) {
            for (int i = 0; i < everywhere.length; i++) {
                rates[family][i] = share(study.cell(family, everywhere[i]));
            }
        }
        Friedman test = Friedman.of(rates);
        return new Ranking.Friedman(test.statistic(), test.degreesOfFreedom(), test.p(), test.exact());
    }
}
