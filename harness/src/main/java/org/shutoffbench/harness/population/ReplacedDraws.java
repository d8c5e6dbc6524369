package org.shutoffbench.harness.population;

import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;

/** Draws of which some are given by their standard-normal coordinate. */
record ReplacedDraws(DrawSource others, Map<ScatterSource, Double> normals) implements DrawSource {

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    @Override
    public double uniform(ScatterSource source) {
        Double normal = normals.get(source);
        if (normal == null) {
            return others.uniform(source);
        }
        return Math.min(Math.max(STANDARD.cumulativeProbability(normal), Double.MIN_NORMAL), Math.nextDown(1.0));
    }

    @Override
    public long noiseKey() {
        return others.noiseKey();
    }
}
