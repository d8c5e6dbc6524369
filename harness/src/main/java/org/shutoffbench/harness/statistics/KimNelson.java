package org.shutoffbench.harness.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Fully sequential selection of the best of several systems observed side by side (source: Kim2001, c = 1).
 *
 * <p>With probability at least 1 - alpha the last survivor is the best, where the best leads by the indifference at least
 * and observations are normal. Common random numbers are welcome: only differences enter.
 */
public final class KimNelson {

    private final int systems;
    private final int firstStage;
    private final double indifference;
    private final double leastVariance;
    private final double hSquared;
    private final List<double[]> first = new ArrayList<>();
    private final double[] sums;
    private final double[][] variances;
    private final boolean[] out;
    private int observed;

    /**
     * A selection that has seen nothing.
     *
     * @param systems how many, at least 2
     * @param firstStage observations before the first elimination, at least 2
     * @param alpha error probability, in (0, 1)
     * @param indifference smallest lead that matters, above 0
     * @param leastVariance floor of the variance of a difference: keeps a first stage without any difference from being
     *     taken for certainty
     */
    public KimNelson(int systems, int firstStage, double alpha, double indifference, double leastVariance) {
        if (!(indifference > 0) || !(leastVariance >= 0)) {
            throw new IllegalArgumentException("an indifference above 0 and a variance not below 0 are needed");
        }
        this.systems = systems;
        this.firstStage = firstStage;
        this.indifference = indifference;
        this.leastVariance = leastVariance;
        this.hSquared = hSquared(systems, firstStage, alpha);
        this.sums = new double[systems];
        this.variances = new double[systems][systems];
        this.out = new boolean[systems];
    }

    /** eta = ((2 alpha/(k - 1))^(-2/(n0 - 1)) - 1)/2. */
    public static double eta(int systems, int firstStage, double alpha) {
        Levels.atLeast(systems, 2, "systems");
        Levels.atLeast(firstStage, 2, "first stage");
        Levels.probability(alpha, "alpha");
        return (Math.pow(2 * alpha / (systems - 1), -2.0 / (firstStage - 1)) - 1) / 2;
    }

    /** h^2 = 2 eta (n0 - 1). */
    public static double hSquared(int systems, int firstStage, double alpha) {
        return 2 * eta(systems, firstStage, alpha) * (firstStage - 1);
    }

    /** Takes one observation of every system (larger is better) and eliminates what can be eliminated. */
    public void observe(double[] values) {
        observed++;
        for (int i = 0; i < systems; i++) {
            sums[i] += values[i];
        }
        if (observed <= firstStage) {
            first.add(values.clone());
        }
        if (observed == firstStage) {
            estimateVariances();
        }
        if (observed >= firstStage) {
            eliminate();
        }
    }

    /** Indices of the systems still in. */
    public List<Integer> survivors() {
        return IntStream.range(0, systems).filter(i -> !out[i]).boxed().toList();
    }

    private void estimateVariances() {
        for (int i = 0; i < systems; i++) {
            for (int l = 0; l < systems; l++) {
                double mean = (sums[i] - sums[l]) / firstStage;
                double squares = 0;
                for (double[] row : first) {
                    double residual = row[i] - row[l] - mean;
                    squares += residual * residual;
                }
                variances[i][l] = Math.max(leastVariance, squares / (firstStage - 1));
            }
        }
    }

    private void eliminate() {
        boolean[] still = new boolean[systems];
        for (int i = 0; i < systems; i++) {
            still[i] = !out[i];
        }
        for (int i = 0; i < systems; i++) {
            for (int l = 0; l < systems; l++) {
                if (still[i] && still[l] && i != l && sums[i] < sums[l] - tolerance(i, l)) {
                    out[i] = true;
                }
            }
        }
    }

    private double tolerance(int i, int l) {
        double reach = hSquared * variances[i][l] / (indifference * indifference) - observed;
        return Math.max(0, indifference / 2 * reach);
    }
}
