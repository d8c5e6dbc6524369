package org.shutoffbench.harness.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * Rare failures by drawing round the design point, with part of the draws left where they naturally fall: this defensive
 * part bounds every weight, so that a failure region away from the design point cannot ruin the estimate (source:
 * Hesterberg1995, Owen2000).
 */
public final class ImportanceSampling {

    private static final int BATCH = 1000;

    private final LimitState limitState;
    private final NormalPoint centre;
    private final double defensive;

    /**
     * A sampler.
     *
     * @param centre design point
     * @param defensive share of natural draws, in (0, 1)
     */
    public ImportanceSampling(LimitState limitState, NormalPoint centre, double defensive) {
        this.limitState = limitState;
        this.centre = centre;
        this.defensive = Levels.probability(defensive, "defensive share");
    }

    /**
     * What was found.
     *
     * @param estimate probability of failure
     * @param standardError of the estimate
     * @param interval normal, cut at 0
     * @param effectiveSamples of the failing draws, (sum w)^2 / sum w^2
     * @param evaluations of the limit state
     */
    public record Result(
            double estimate, double standardError, Interval interval, double effectiveSamples, long evaluations) {}

    /**
     * Draws and weighs.
     *
     * @param samples number of draws, at least 2
     */
    public Result run(int samples, double confidence, RandomGenerator random) {
        Levels.atLeast(samples, 2, "samples");
        Levels.probability(confidence, "confidence");
        Gaussians gaussians = new Gaussians(random);
        double sum = 0;
        double squares = 0;
        for (int done = 0; done < samples; done += BATCH) {
            List<NormalPoint> points = new ArrayList<>();
            for (int i = 0; i < Math.min(BATCH, samples - done); i++) {
                points.add(draw(gaussians, random));
            }
            double[] margins = limitState.margins(points);
            for (int i = 0; i < margins.length; i++) {
                double weight = margins[i] <= 0 ? weight(points.get(i)) : 0;
                sum += weight;
                squares += weight * weight;
            }
        }
        double estimate = sum / samples;
        double variance = Math.max(0, squares / samples - estimate * estimate) / (samples - 1);
        double reach = StandardNormal.twoSided(confidence) * Math.sqrt(variance);
        return new Result(
                estimate,
                Math.sqrt(variance),
                new Interval(Math.max(0, estimate - reach), Math.min(1, estimate + reach)),
                squares == 0 ? 0 : sum * sum / squares,
                samples);
    }

    private NormalPoint draw(Gaussians gaussians, RandomGenerator random) {
        NormalPoint natural = gaussians.nextPoint(centre.dimension());
        if (random.nextDouble() < defensive) {
            return natural;
        }
        double[] moved = natural.coordinates();
        for (int i = 0; i < moved.length; i++) {
            moved[i] += centre.coordinate(i);
        }
        return NormalPoint.of(moved, natural.noiseKey());
    }

    /** Natural density over that of the mixture: 1 / (defensive + (1 - defensive) exp(u.c - c.c/2)). */
    private double weight(NormalPoint point) {
        double along = -centre.squaredNorm() / 2;
        for (int i = 0; i < point.dimension(); i++) {
            along += point.coordinate(i) * centre.coordinate(i);
        }
        return 1 / (defensive + (1 - defensive) * Math.exp(along));
    }
}
