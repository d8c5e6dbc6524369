package org.shutoffbench.harness.statistics;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Friedman's rank test: do all treatments do alike, with blocks of unlike difficulty? (source: Conover1999)
 *
 * @param statistic chi-square form, ties corrected; 0 where every block is one tie
 * @param degreesOfFreedom treatments less one
 * @param p exact or by chi-square
 * @param exact whether p counts all rankings
 */
public record Friedman(double statistic, int degreesOfFreedom, double p, boolean exact) {

    private static final int MOST_TREATMENTS_EXACT = 6;
    private static final int MOST_BLOCKS_EXACT = 5;

    /**
     * The test.
     *
     * @param blocks one row a block, one column a treatment; at least 2 of each
     */
    public static Friedman of(double[][] blocks) {
        int treatments = blocks.length == 0 ? 0 : blocks[0].length;
        if (blocks.length < 2 || treatments < 2) {
            throw new IllegalArgumentException("two blocks and two treatments are the least");
        }
        int[][] doubledRanks = new int[blocks.length][];
        for (int i = 0; i < blocks.length; i++) {
            doubledRanks[i] = doubledRanks(blocks[i]);
        }
        double statistic = statistic(doubledRanks);
        int degreesOfFreedom = treatments - 1;
        boolean exact = treatments <= MOST_TREATMENTS_EXACT && blocks.length <= MOST_BLOCKS_EXACT;
        double p = exact
                ? exactP(doubledRanks)
                : ChiSquaredDistribution.of(degreesOfFreedom).survivalProbability(statistic);
        return new Friedman(statistic, degreesOfFreedom, p, exact);
    }

    /** The tail by chi-square: close for many blocks, coarse for few. */
    public double chiSquareP() {
        return ChiSquaredDistribution.of(degreesOfFreedom).survivalProbability(statistic);
    }

    /** Twice the mid-ranks: whole numbers even with ties. */
    static int[] doubledRanks(double[] values) {
        int[] ranks = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            int below = 0;
            int equal = 0;
            for (double other : values) {
                below += other < values[i] ? 1 : 0;
                equal += other == values[i] ? 1 : 0;
            }
            ranks[i] = 2 * below + equal + 1;
        }
        return ranks;
    }

    private static double statistic(int[][] doubledRanks) {
        int k = doubledRanks[0].length;
        double middle = doubledRanks.length * (k + 1);
        double betweenSquares = 0;
        for (int sum : columnSums(doubledRanks)) {
            betweenSquares += (sum - middle) * (sum - middle);
        }
        double withinSquares = 0;
        for (int[] block : doubledRanks) {
            for (int rank : block) {
                withinSquares += (rank - (k + 1.0)) * (rank - (k + 1.0));
            }
        }
        return withinSquares == 0 ? 0 : (k - 1) * betweenSquares / withinSquares;
    }

    private static int[] columnSums(int[][] doubledRanks) {
        int[] sums = new int[doubledRanks[0].length];
        for (int[] block : doubledRanks) {
            for (int j = 0; j < block.length; j++) {
                sums[j] += block[j];
            }
        }
        return sums;
    }

    /** Share of all rankings of the same ties whose rank sums spread at least as far. */
    private static double exactP(int[][] doubledRanks) {
        Map<Sums, Double> laws = new HashMap<>();
        laws.put(Sums.sorted(doubledRanks[0]), 1.0);
        for (int i = 1; i < doubledRanks.length; i++) {
            laws = withBlock(laws, doubledRanks[i]);
        }
        long seen = spread(columnSums(doubledRanks));
        return Math.min(
                1,
                laws.entrySet().stream()
                        .filter(entry -> spread(entry.getKey().values) >= seen)
                        .mapToDouble(Map.Entry::getValue)
                        .sorted()
                        .sum());
    }

    private static Map<Sums, Double> withBlock(Map<Sums, Double> laws, int[] block) {
        Map<Sums, Double> next = new HashMap<>();
        Map<Sums, Double> rankings = new HashMap<>();
        permute(block.clone(), 0, rankings);
        laws.forEach((sums, weight) ->
                rankings.forEach((ranks, share) -> next.merge(sums.plus(ranks), weight * share, Double::sum)));
        return next;
    }

    private static void permute(int[] ranks, int from, Map<Sums, Double> into) {
        if (from == ranks.length) {
            double share = 1;
            for (int i = 2; i <= ranks.length; i++) {
                share /= i;
            }
            into.merge(new Sums(ranks.clone()), share, Double::sum);
            return;
        }
        for (int i = from; i < ranks.length; i++) {
            swap(ranks, from, i);
            permute(ranks, from + 1, into);
            swap(ranks, from, i);
        }
    }

    private static void swap(int[] ranks, int i, int j) {
        int kept = ranks[i];
        ranks[i] = ranks[j];
        ranks[j] = kept;
    }

    private static long spread(int[] sums) {
        long squares = 0;
        for (int sum : sums) {
            squares += (long) sum * sum;
        }
        return squares;
    }

    /** Rank sums as a key; treatments are interchangeable under the hypothesis, so sorted ones stand for all. */
    private static final class Sums {
        private final int[] values;

        Sums(int[] values) {
            this.values = values;
        }

        static Sums sorted(int[] values) {
            int[] copy = values.clone();
            Arrays.sort(copy);
            return new Sums(copy);
        }

        Sums plus(Sums other) {
            int[] sum = new int[values.length];
            for (int j = 0; j < sum.length; j++) {
                sum[j] = values[j] + other.values[j];
            }
            Arrays.sort(sum);
            return new Sums(sum);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Sums sums && Arrays.equals(values, sums.values);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(values);
        }
    }
}
