package org.shutoffbench.harness.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * How much of the variance of a result each group of inputs explains alone (first order) and with all its interactions
 * (total), on two independent sample matrices. The first order by the mean product of the centred second matrix and the change
 * that the group makes to the first (source: Saltelli2010), the total by half the mean square of that change (source:
 * Jansen1999): a group that changes nothing has indices of exactly 0.
 */
public final class SobolIndices {

    private static final int RESAMPLES = 1000;

    private final int[][] groups;
    private final int dimension;

    /**
     * For inputs in groups.
     *
     * @param groups indices of the inputs of each group; every input from 0 to the greatest belongs to one group at most
     */
    public SobolIndices(int[][] groups) {
        this.groups = Arrays.stream(groups).map(int[]::clone).toArray(int[][]::new);
        this.dimension =
                1 + Arrays.stream(groups).flatMapToInt(Arrays::stream).max().orElse(-1);
        if (Arrays.stream(groups).flatMapToInt(Arrays::stream).distinct().count()
                != Arrays.stream(groups).mapToInt(group -> group.length).sum()) {
            throw new IllegalArgumentException("an input belongs to one group");
        }
    }

    /** The result at many points of the unit cube; points are independent of each other. */
    @FunctionalInterface
    public interface Model {
        /** Values at the points, in the order given; each point has one uniform an input. */
        double[] values(List<double[]> points);
    }

    /**
     * Indices of one group.
     *
     * @param first share of the variance explained by the group alone
     * @param firstInterval by bootstrap
     * @param total share of the variance that vanishes where the group is fixed, interactions included
     * @param totalInterval by bootstrap
     */
    public record Index(double first, Interval firstInterval, double total, Interval totalInterval) {}

    /**
     * Estimates the indices of every group with rows x (groups + 2) values of the model.
     *
     * @param rows of each sample matrix, at least 10
     */
    public List<Index> estimate(Model model, int rows, double confidence, RandomGenerator random) {
        Levels.atLeast(rows, 10, "rows");
        Levels.probability(confidence, "confidence");
        List<double[]> first = uniforms(rows, random);
        List<double[]> second = uniforms(rows, random);
        double[] atFirst = model.values(first);
        double[] atSecond = model.values(second);
        double[][] atMixed = new double[groups.length][];
        for (int group = 0; group < groups.length; group++) {
            atMixed[group] = model.values(mixed(first, second, groups[group]));
        }
        return new Estimates(atFirst, atSecond, atMixed).indices(confidence, random);
    }

    private List<double[]> uniforms(int rows, RandomGenerator random) {
        List<double[]> points = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            double[] point = new double[dimension];
            for (int i = 0; i < dimension; i++) {
                point[i] = ((random.nextLong() >>> 12) + 0.5) * 0x1p-52;
            }
            points.add(point);
        }
        return points;
    }

    /** The first matrix with the columns of a group taken from the second. */
    private static List<double[]> mixed(List<double[]> first, List<double[]> second, int[] group) {
        List<double[]> points = new ArrayList<>();
        for (int row = 0; row < first.size(); row++) {
            double[] point = first.get(row).clone();
            for (int i : group) {
                point[i] = second.get(row)[i];
            }
            points.add(point);
        }
        return points;
    }

    /** Values of the model on both matrices and their mixtures. */
    private static final class Estimates {
        private final double[] atFirst;
        private final double[] atSecond;
        private final double[][] atMixed;

        Estimates(double[] atFirst, double[] atSecond, double[][] atMixed) {
            this.atFirst = atFirst;
            this.atSecond = atSecond;
            this.atMixed = atMixed;
        }

        List<Index> indices(double confidence, RandomGenerator random) {
            int rows = atFirst.length;
            int[] all = new int[rows];
            Arrays.setAll(all, i -> i);
            double[][] firsts = new double[atMixed.length][RESAMPLES];
            double[][] totals = new double[atMixed.length][RESAMPLES];
            int[] resampled = new int[rows];
            for (int resample = 0; resample < RESAMPLES; resample++) {
                Arrays.setAll(resampled, i -> random.nextInt(rows));
                double mean = mean(resampled);
                double variance = variance(resampled, mean);
                for (int group = 0; group < atMixed.length; group++) {
                    firsts[group][resample] = product(atMixed[group], resampled, mean, variance);
                    totals[group][resample] = half(atMixed[group], resampled, variance);
                }
            }
            double mean = mean(all);
            double variance = variance(all, mean);
            List<Index> indices = new ArrayList<>();
            for (int group = 0; group < atMixed.length; group++) {
                indices.add(new Index(
                        product(atMixed[group], all, mean, variance),
                        percentiles(firsts[group], confidence),
                        half(atMixed[group], all, variance),
                        percentiles(totals[group], confidence)));
            }
            return indices;
        }

        /** Mean of the second matrix's deviation times the change of the first, over the variance; 0 where nothing varies. */
        private double product(double[] mixed, int[] rows, double mean, double variance) {
            double products = 0;
            for (int row : rows) {
                products += (atSecond[row] - mean) * (mixed[row] - atFirst[row]);
            }
            return variance == 0 ? 0 : products / (rows.length * variance);
        }

        /** Half the mean squared change of the first matrix over the variance; 0 where nothing varies. */
        private double half(double[] mixed, int[] rows, double variance) {
            double squares = 0;
            for (int row : rows) {
                squares += (mixed[row] - atFirst[row]) * (mixed[row] - atFirst[row]);
            }
            return variance == 0 ? 0 : squares / (2 * rows.length * variance);
        }

        private double mean(int[] rows) {
            double sum = 0;
            for (int row : rows) {
                sum += atFirst[row] + atSecond[row];
            }
            return sum / (2.0 * rows.length);
        }

        private double variance(int[] rows, double mean) {
            double squares = 0;
            for (int row : rows) {
                squares +=
                        (atFirst[row] - mean) * (atFirst[row] - mean) + (atSecond[row] - mean) * (atSecond[row] - mean);
            }
            return squares / (2.0 * rows.length - 1);
        }

        private static Interval percentiles(double[] values, double confidence) {
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            int cut = (int) Math.floor((1 - confidence) / 2 * sorted.length);
            return new Interval(sorted[cut], sorted[sorted.length - 1 - cut]);
        }
    }
}
