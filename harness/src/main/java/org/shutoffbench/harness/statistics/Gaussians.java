package org.shutoffbench.harness.statistics;

import java.util.random.RandomGenerator;

/** Standard-normal draws by inversion: one uniform each, the same on every Java version. */
final class Gaussians {

    private final RandomGenerator random;

    Gaussians(RandomGenerator random) {
        this.random = random;
    }

    double next() {
        double uniform = ((random.nextLong() >>> 12) + 0.5) * 0x1p-52;
        return StandardNormal.quantile(uniform);
    }

    NormalPoint nextPoint(int dimension) {
        double[] coordinates = new double[dimension];
        for (int i = 0; i < dimension; i++) {
            coordinates[i] = next();
        }
        return NormalPoint.of(coordinates, random.nextLong());
    }
}
