package org.shutoffbench.harness.statistics;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.numbers.gamma.LogGamma;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Student's t with a noncentrality: the law of (Z + delta) / sqrt(chi^2_nu / nu).
 *
 * <p>Both tails by integrating the normal tail over the law of the scale: P(T &lt;= t) = E Phi(t S - delta), S =
 * sqrt(chi^2_nu / nu). Exact to about 1e-11 absolutely; no series, so a large noncentrality does no harm (source: Owen1968).
 */
public final class NoncentralT {

    private final double degreesOfFreedom;
    private final double noncentrality;
    private final double logConstant;

    private NoncentralT(double degreesOfFreedom, double noncentrality) {
        this.degreesOfFreedom = degreesOfFreedom;
        this.noncentrality = noncentrality;
        double half = degreesOfFreedom / 2;
        this.logConstant = Math.log(2) + half * Math.log(half) - LogGamma.value(half);
    }

    /**
     * The law for given parameters.
     *
     * @param degreesOfFreedom nu, above 0
     * @param noncentrality delta, finite
     */
    public static NoncentralT of(double degreesOfFreedom, double noncentrality) {
        if (!(degreesOfFreedom > 0) || !Double.isFinite(noncentrality)) {
            throw new IllegalArgumentException("degrees of freedom above 0 and a finite noncentrality are needed, not "
                    + degreesOfFreedom + " and " + noncentrality);
        }
        return new NoncentralT(degreesOfFreedom, noncentrality);
    }

    /** P(T &lt;= t). */
    public double cdf(double t) {
        return overScale(t, s -> StandardNormal.cdf(t * s - noncentrality));
    }

    /** P(T &gt; t). */
    public double survival(double t) {
        return overScale(t, s -> StandardNormal.survival(t * s - noncentrality));
    }

    /**
     * The t with P(T &lt;= t) = p.
     *
     * @param p in (0, 1)
     */
    public double quantile(double p) {
        Levels.probability(p, "p");
        double start = noncentrality + TDistribution.of(degreesOfFreedom).inverseCumulativeProbability(p);
        double reach = 1 + Math.abs(start);
        double low = start;
        while (cdf(low) > p) {
            low -= reach;
            reach *= 2;
        }
        reach = 1 + Math.abs(start);
        double high = start;
        while (cdf(high) < p) {
            high += reach;
            reach *= 2;
        }
        if (low == high) {
            return low;
        }
        return new BrentSolver(1e-13, 1e-13).solve(500, t -> cdf(t) - p, low, high);
    }

    private double overScale(double t, DoubleUnaryOperator tail) {
        double middle = Math.sqrt(Math.max(0, degreesOfFreedom - 1) / degreesOfFreedom);
        double spread = 1 / Math.sqrt(2 * degreesOfFreedom);
        double greatest = middle + 40 * spread;
        int nearZero = degreesOfFreedom < SMOOTH_AT_ZERO ? HALVINGS : 0;
        double[] edges = new double[EDGE_DISTANCES.length * 4 + 4 + nearZero];
        int used = 0;
        edges[used++] = 0;
        edges[used++] = greatest;
        double step = t == 0 ? middle : noncentrality / t;
        double stepWidth = t == 0 ? spread : 1 / Math.abs(t);
        edges[used++] = within(middle, greatest);
        edges[used++] = within(step, greatest);
        for (double distance : EDGE_DISTANCES) {
            edges[used++] = within(middle - distance * spread, greatest);
            edges[used++] = within(middle + distance * spread, greatest);
            edges[used++] = within(step - distance * stepWidth, greatest);
            edges[used++] = within(step + distance * stepWidth, greatest);
        }
        for (int i = 1; i <= nearZero; i++) {
            edges[used++] = Math.scalb(middle + spread, -i);
        }
        double integral = Quadrature.over(edges, s -> scaleDensity(s) * tail.applyAsDouble(s));
        return Math.min(1, Math.max(0, integral));
    }

    /** Density of sqrt(chi^2_nu / nu). */
    private double scaleDensity(double s) {
        return Math.exp(logConstant + (degreesOfFreedom - 1) * Math.log(s) - degreesOfFreedom * s * s / 2);
    }

    private static double within(double edge, double greatest) {
        return Math.min(greatest, Math.max(0, edge));
    }

    /** Below so many degrees of freedom the scale's density is not smooth at 0: panels halve towards it. */
    private static final double SMOOTH_AT_ZERO = 16;

    private static final int HALVINGS = 45;

    /** Panel edges around the two places where the integrand bends, in widths of the bend. */
    private static final double[] EDGE_DISTANCES = {1, 2, 3.5, 5, 7, 9, 12, 16, 22, 30};
}
