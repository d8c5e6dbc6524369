package org.shutoffbench.harness.study.calibrate;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Least squares of a function that is straight between evenly spaced knots. A faint pull towards equal slopes carries the
 * function on over knots that no point comes near.
 */
final class HatFit {

    private static final double SMOOTHING = 0.1;

    private final double first;
    private final double step;
    private final RealMatrix normal;
    private final RealVector right;

    HatFit(double first, double step, int knots) {
        this.first = first;
        this.step = step;
        normal = new Array2DRowRealMatrix(knots, knots);
        right = new ArrayRealVector(knots);
        double[] bend = {1, -2, 1};
        for (int k = 1; k + 1 < knots; k++) {
            for (int i = 0; i < bend.length; i++) {
                for (int j = 0; j < bend.length; j++) {
                    normal.addToEntry(k - 1 + i, k - 1 + j, SMOOTHING * bend[i] * bend[j]);
                }
            }
        }
    }

    void add(double x, double y) {
        double knot = (x - first) / step;
        int i = (int) Math.max(0, Math.min(right.getDimension() - 2, Math.floor(knot)));
        double inside = knot - i;
        normal.addToEntry(i, i, (1 - inside) * (1 - inside));
        normal.addToEntry(i, i + 1, inside * (1 - inside));
        normal.addToEntry(i + 1, i, inside * (1 - inside));
        normal.addToEntry(i + 1, i + 1, inside * inside);
        right.addToEntry(i, (1 - inside) * y);
        right.addToEntry(i + 1, inside * y);
    }

    /** Values at the knots. */
    double[] values() {
        return new CholeskyDecomposition(normal, 1e-9, 1e-12)
                .getSolver()
                .solve(right)
                .toArray();
    }

    /** Value of such a function between its knots, straight on beyond them. */
    static double at(double[] values, double first, double step, double x) {
        double knot = (x - first) / step;
        int i = (int) Math.max(0, Math.min(values.length - 2, Math.floor(knot)));
        return values[i] + (knot - i) * (values[i + 1] - values[i]);
    }
}
