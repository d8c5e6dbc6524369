package org.shutoffbench.harness.population;

/**
 * The mild joint: every draw at its median, parts that are present with a probability of less than one half absent.
 *
 * @param noiseKey key of all noise of the run
 */
public record MedianDraws(long noiseKey) implements DrawSource {

    @Override
    public double uniform(ScatterSource source) {
        return 0.5;
    }
}
