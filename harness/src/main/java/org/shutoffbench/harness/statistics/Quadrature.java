package org.shutoffbench.harness.statistics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Gauss-Legendre integration over panels whose edges the caller puts where the integrand bends. */
final class Quadrature {

    private static final int POINTS = 20;
    private static final double[] NODES = new double[POINTS];
    private static final double[] WEIGHTS = new double[POINTS];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(POINTS);
        for (int i = 0; i < POINTS; i++) {
            NODES[i] = rule.getPoint(i);
            WEIGHTS[i] = rule.getWeight(i);
        }
    }

    private Quadrature() {}

    /** Integral over the range of the edges, which need not be sorted. */
    static double over(double[] edges, DoubleUnaryOperator integrand) {
        double[] sorted = edges.clone();
        Arrays.sort(sorted);
        double sum = 0;
        for (int panel = 1; panel < sorted.length; panel++) {
            double half = (sorted[panel] - sorted[panel - 1]) / 2;
            double middle = (sorted[panel] + sorted[panel - 1]) / 2;
            for (int i = 0; half > 0 && i < POINTS; i++) {
                sum += half * WEIGHTS[i] * integrand.applyAsDouble(middle + half * NODES[i]);
            }
        }
        return sum;
    }
}
