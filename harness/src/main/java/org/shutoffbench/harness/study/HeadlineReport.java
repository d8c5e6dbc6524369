package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Decides what the first sentence of a report may say. */
final class HeadlineReport {

    /** Fewer joints than this in a cell rank nothing. */
    static final int LEAST_JOINTS = 50;

    private static final double HALF = 0.5;

    private final List<CellSummary> cells;
    private final Ranking ranking;

    HeadlineReport(List<CellSummary> cells, Ranking ranking) {
        this.cells = cells;
        this.ranking = ranking;
    }

    Headline summarise() {
        List<Ranking.Standing> ranked = ranking.standings().stream()
                .filter(Ranking.Standing::everyFamily)
                .toList();
        if (ranked.isEmpty()) {
            return new Headline(Headline.Finding.NOTHING_RAN, List.of(), -1, null, List.of(), silentMiss());
        }
        Ranking.Standing leader = ranked.get(0);
        List<Integer> leaders = leaders(ranked);
        return new Headline(
                finding(ranked, leaders),
                leaders,
                leader.worstFamily(),
                leader.inWindow(),
                differences(ranked, leaders),
                silentMiss());
    }

    private Headline.Finding finding(List<Ranking.Standing> ranked, List<Integer> leaders) {
        if (cells.stream().anyMatch(cell -> cell.run() > 0 && cell.run() < LEAST_JOINTS)) {
            return Headline.Finding.TOO_FEW;
        }
        Rate best = ranked.get(0).inWindow();
        if (best == null || best.estimate() <= HALF) {
            return Headline.Finding.NONE_SERVES;
        }
        if (ranked.size() == 1) {
            return Headline.Finding.ALONE;
        }
        return leaders.size() > 1 ? Headline.Finding.INSEPARABLE : Headline.Finding.SEPARATED;
    }

    /** The first in rank and all that cannot be told apart from it. */
    private List<Integer> leaders(List<Ranking.Standing> ranked) {
        int leader = ranked.get(0).strategy();
        List<Integer> leaders = new ArrayList<>(List.of(leader));
        for (Ranking.Standing other : ranked.subList(1, ranked.size())) {
            if (RankingReport.sign(leader, other.strategy(), ranking.differences()) <= 0) {
                leaders.add(other.strategy());
            }
        }
        return leaders;
    }

    private List<Ranking.WorstFamilyDifference> differences(List<Ranking.Standing> ranked, List<Integer> leaders) {
        List<Integer> others = new ArrayList<>(leaders.subList(1, leaders.size()));
        if (others.isEmpty() && ranked.size() > 1) {
            others.add(ranked.get(1).strategy());
        }
        int leader = leaders.get(0);
        return ranking.differences().stream()
                .filter(difference -> difference.first() == leader && others.contains(difference.second()))
                .toList();
    }

    /** The highest rate of silent misses; of equal ones that whose joints were left with the least torque. */
    private Headline.@Nullable SilentMiss silentMiss() {
        Headline.SilentMiss worst = null;
        double leastNm = Double.POSITIVE_INFINITY;
        for (CellSummary cell : cells) {
            Rates rates = cell.rates();
            if (rates == null || rates.silentMiss().count() == 0) {
                continue;
            }
            double more = worst == null
                    ? 1
                    : rates.silentMiss().estimate() - worst.rate().estimate();
            double meanNm = meanTorqueNm(cell);
            if (more > 0 || (more == 0 && meanNm < leastNm)) {
                worst = new Headline.SilentMiss(cell.strategy(), cell.family(), rates.silentMiss());
                leastNm = meanNm;
            }
        }
        return worst;
    }

    private static double meanTorqueNm(CellSummary cell) {
        Double mean = cell.clampingTorque() == null
                ? null
                : cell.clampingTorque().mean().value();
        return mean == null ? Double.POSITIVE_INFINITY : mean;
    }
}
