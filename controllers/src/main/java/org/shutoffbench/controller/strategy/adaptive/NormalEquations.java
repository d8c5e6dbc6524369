package org.shutoffbench.controller.strategy.adaptive;

import java.util.Arrays;

/** A small symmetric positive system in flat arrays, lower triangle in rows; solved by Cholesky's method. */
final class NormalEquations {

    private final int n;
    final float[] matrix;
    final float[] right;
    private final float[] factor;
    private final float[] forward;

    NormalEquations(int size) {
        n = size;
        matrix = new float[n * n];
        right = new float[n];
        factor = new float[n * n];
        forward = new float[n];
    }

    /** Forgets everything, the last factors included. */
    void reset() {
        clear();
        Arrays.fill(factor, 0);
        Arrays.fill(forward, 0);
    }

    void clear() {
        for (int i = 0; i < matrix.length; i++) {
            matrix[i] = 0;
        }
        for (int i = 0; i < n; i++) {
            right[i] = 0;
        }
    }

    void copyFrom(NormalEquations other) {
        System.arraycopy(other.matrix, 0, matrix, 0, matrix.length);
        System.arraycopy(other.right, 0, right, 0, n);
    }

    /** Adds one row: residual and its slopes, times a weight. */
    void add(float[] slopes, float residual, float weight) {
        for (int i = 0; i < n; i++) {
            float weighted = weight * slopes[i];
            right[i] -= weighted * residual;
            int row = i * n;
            for (int j = 0; j <= i; j++) {
                matrix[row + j] += weighted * slopes[j];
            }
        }
    }

    /** Factors matrix + damping times its diagonal. */
    void factor(float damping) {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                float sum = matrix[i * n + j];
                if (i == j) {
                    sum += damping * sum;
                }
                for (int k = 0; k < j; k++) {
                    sum -= factor[i * n + k] * factor[j * n + k];
                }
                if (i == j) {
                    factor[i * n + i] = (float) Math.sqrt(Math.max(sum, 1e-6f * matrix[i * n + i]));
                } else {
                    factor[i * n + j] = sum / factor[j * n + j];
                }
            }
        }
    }

    /** Solves for a right-hand side with the last factor. */
    void solve(float[] rightSide, float[] into) {
        forward(rightSide);
        for (int i = n - 1; i >= 0; i--) {
            float sum = forward[i];
            for (int k = i + 1; k < n; k++) {
                sum -= factor[k * n + i] * into[k];
            }
            into[i] = sum / factor[i * n + i];
        }
    }

    /** v' M^-1 v with the last factor: the variance of v'x. */
    float variance(float[] v) {
        forward(v);
        float sum = 0;
        for (int i = 0; i < n; i++) {
            sum += forward[i] * forward[i];
        }
        return sum;
    }

    private void forward(float[] rightSide) {
        for (int i = 0; i < n; i++) {
            float sum = rightSide[i];
            for (int k = 0; k < i; k++) {
                sum -= factor[i * n + k] * forward[k];
            }
            forward[i] = sum / factor[i * n + i];
        }
    }
}
