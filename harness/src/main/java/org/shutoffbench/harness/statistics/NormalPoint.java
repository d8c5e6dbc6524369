package org.shutoffbench.harness.statistics;

import java.util.Arrays;

/** A point in standard-normal space and the key of the noise that goes with it. Immutable. */
public final class NormalPoint {

    private final double[] coordinates;
    private final long noiseKey;

    private NormalPoint(double[] coordinates, long noiseKey) {
        this.coordinates = coordinates;
        this.noiseKey = noiseKey;
    }

    /** A point; the coordinates are copied. */
    public static NormalPoint of(double[] coordinates, long noiseKey) {
        return new NormalPoint(coordinates.clone(), noiseKey);
    }

    /** The origin: everything at its median. */
    public static NormalPoint origin(int dimension, long noiseKey) {
        return new NormalPoint(new double[dimension], noiseKey);
    }

    /** Number of coordinates. */
    public int dimension() {
        return coordinates.length;
    }

    /** One coordinate, in standard deviations. */
    public double coordinate(int i) {
        return coordinates[i];
    }

    /** A copy of all coordinates. */
    public double[] coordinates() {
        return coordinates.clone();
    }

    /** Key of all randomness that is not a coordinate. */
    public long noiseKey() {
        return noiseKey;
    }

    /** Distance from the origin. */
    public double norm() {
        return Math.sqrt(squaredNorm());
    }

    double squaredNorm() {
        double squares = 0;
        for (double coordinate : coordinates) {
            squares += coordinate * coordinate;
        }
        return squares;
    }

    /** All coordinates times a factor. */
    public NormalPoint scaled(double factor) {
        double[] scaled = new double[coordinates.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = factor * coordinates[i];
        }
        return new NormalPoint(scaled, noiseKey);
    }

    /** The same with one coordinate replaced. */
    public NormalPoint with(int i, double coordinate) {
        double[] changed = coordinates.clone();
        changed[i] = coordinate;
        return new NormalPoint(changed, noiseKey);
    }

    /** The same with another noise key. */
    public NormalPoint withNoise(long key) {
        return new NormalPoint(coordinates, key);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof NormalPoint point
                && noiseKey == point.noiseKey
                && Arrays.equals(coordinates, point.coordinates);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(coordinates) + Long.hashCode(noiseKey);
    }
}
