package org.shutoffbench.harness.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Rare failures by conditional levels: each level keeps the tenth of the samples nearest to failure and walks on from them
 * (sources: Au2001; walks by adaptive conditional sampling, Papaioannou2015). The noise key is proposed afresh in every
 * step.
 *
 * <p>A limit state may be infinite on part of the space (where the verdict alone rules the event out): such points never
 * enter a level. It needs at least one sample in ten finite.
 */
public final class SubsetSimulation {

    /**
     * Correlation assumed between the shares of neighbouring levels, which share their seeds; between the bounds 0 and 1 of
     * Au2001 and chosen because stated intervals then cover (docs/statistics.md has the figures).
     */
    private static final double NEIGHBOURS = 0.5;

    private static final double WANTED_ACCEPTANCE = 0.44;
    private static final int MOST_LEVELS = 20;
    private static final int CHAINS_PER_ADAPTATION = 10;

    private final LimitState limitState;
    private final int dimension;
    private final int samples;
    private final RandomGenerator random;
    private final Gaussians gaussians;
    private long evaluations;
    private double step = 0.6;

    /**
     * A simulation.
     *
     * @param samples in each level, a multiple of 10, at least 100
     */
    public SubsetSimulation(LimitState limitState, int dimension, int samples, RandomGenerator random) {
        if (samples < 100 || samples % 10 != 0) {
            throw new IllegalArgumentException("samples must be a multiple of 10, at least 100, not " + samples);
        }
        this.limitState = limitState;
        this.dimension = dimension;
        this.samples = samples;
        this.random = random;
        this.gaussians = new Gaussians(random);
    }

    /**
     * What was found.
     *
     * @param estimate probability of failure; 0 where no level reached it, with an upper bound only
     * @param variation coefficient of variation of the estimate, the correlation within chains counted
     * @param interval lognormal, with the confidence asked for
     * @param effectiveSamples independent plain samples that would give the same variation
     * @param evaluations of the limit state
     * @param levels used, the last one included
     * @param failures points that fail, nearest to the origin first
     */
    public record Result(
            double estimate,
            double variation,
            Interval interval,
            double effectiveSamples,
            long evaluations,
            int levels,
            List<NormalPoint> failures) {}

    /** Runs the levels. */
    public Result run(double confidence) {
        Levels.probability(confidence, "confidence");
        List<NormalPoint> points = new ArrayList<>();
        for (int i = 0; i < samples; i++) {
            points.add(gaussians.nextPoint(dimension));
        }
        SubsetLevel level = new SubsetLevel(points, margins(points), 1);
        double probability = 1;
        double squaredVariation = 0;
        double variationBefore = 0;
        for (int done = 1; done <= MOST_LEVELS; done++) {
            double threshold = Math.max(0, level.quantile());
            double share = level.share(threshold);
            if (share == 0) {
                return nothing(ruleOfThree(confidence), done);
            }
            if (share == 1 && threshold > 0) {
                return nothing(probability, done);
            }
            probability *= share;
            double variation = Math.sqrt(level.squaredVariation(threshold));
            squaredVariation += variation * (variation + 2 * NEIGHBOURS * variationBefore);
            variationBefore = variation;
            if (threshold == 0) {
                return result(probability, Math.sqrt(squaredVariation), confidence, done, level.failures());
            }
            level = nextLevel(level, threshold);
        }
        return nothing(probability, MOST_LEVELS);
    }

    /**
     * No failure was reached. Where the walk came to stand on a plateau, the probability of the plateau is all that is known:
     * its samples may be copies of each other.
     */
    private Result nothing(double upperBound, int levels) {
        return new Result(0, Double.NaN, new Interval(0, upperBound), 0, evaluations, levels, List.of());
    }

    private Result result(
            double probability, double variation, double confidence, int levels, List<NormalPoint> failures) {
        double spread = Math.sqrt(Math.log(1 + variation * variation));
        double reach = Math.exp(StandardNormal.twoSided(confidence) * spread);
        return new Result(
                probability,
                variation,
                new Interval(probability / reach, Math.min(1, probability * reach)),
                (1 - probability) / (probability * variation * variation),
                evaluations,
                levels,
                failures);
    }

    /** Not one of the first, independent samples can fail. */
    private double ruleOfThree(double confidence) {
        return Math.min(1, -Math.log((1 - confidence) / 2) / samples);
    }

    private double[] margins(List<NormalPoint> points) {
        evaluations += points.size();
        return limitState.margins(points);
    }

    /** Walks on from every sample within the threshold, chains side by side. */
    private SubsetLevel nextLevel(SubsetLevel level, double threshold) {
        List<NormalPoint> seeds = new ArrayList<>();
        List<Double> seedMargins = new ArrayList<>();
        for (int i : level.within(threshold)) {
            seeds.add(level.point(i));
            seedMargins.add(level.margin(i));
        }
        shuffle(seeds, seedMargins);
        int chains = Math.min(seeds.size(), samples / 2);
        int length = samples / chains;
        NormalPoint[][] states = new NormalPoint[chains][length];
        double[][] margins = new double[chains][length];
        for (int from = 0; from < chains; from += Math.max(1, chains / CHAINS_PER_ADAPTATION)) {
            int to = Math.min(chains, from + Math.max(1, chains / CHAINS_PER_ADAPTATION));
            for (int chain = from; chain < to; chain++) {
                states[chain][0] = seeds.get(chain);
                margins[chain][0] = seedMargins.get(chain);
            }
            double acceptance = walk(states, margins, from, to, threshold);
            step = Math.min(1, step * Math.exp(acceptance - WANTED_ACCEPTANCE));
        }
        List<NormalPoint> points = new ArrayList<>();
        double[] flat = new double[chains * length];
        for (int chain = 0; chain < chains; chain++) {
            points.addAll(Arrays.asList(states[chain]));
            System.arraycopy(margins[chain], 0, flat, chain * length, length);
        }
        return new SubsetLevel(points, flat, length);
    }

    private double walk(NormalPoint[][] states, double[][] margins, int from, int to, double threshold) {
        int accepted = 0;
        int length = states[from].length;
        for (int at = 1; at < length; at++) {
            List<NormalPoint> proposals = new ArrayList<>();
            for (int chain = from; chain < to; chain++) {
                proposals.add(proposal(states[chain][at - 1]));
            }
            double[] proposed = margins(proposals);
            for (int chain = from; chain < to; chain++) {
                boolean accept = proposed[chain - from] <= threshold;
                states[chain][at] = accept ? proposals.get(chain - from) : states[chain][at - 1];
                margins[chain][at] = accept ? proposed[chain - from] : margins[chain][at - 1];
                accepted += accept ? 1 : 0;
            }
        }
        return (double) accepted / ((to - from) * (length - 1));
    }

    private NormalPoint proposal(NormalPoint from) {
        double kept = Math.sqrt(1 - step * step);
        double[] coordinates = new double[dimension];
        for (int i = 0; i < dimension; i++) {
            coordinates[i] = kept * from.coordinate(i) + step * gaussians.next();
        }
        return NormalPoint.of(coordinates, random.nextLong());
    }

    private void shuffle(List<NormalPoint> seeds, List<Double> margins) {
        for (int i = seeds.size() - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            seeds.set(i, seeds.set(j, seeds.get(i)));
            margins.set(i, margins.set(j, margins.get(i)));
        }
    }
}
