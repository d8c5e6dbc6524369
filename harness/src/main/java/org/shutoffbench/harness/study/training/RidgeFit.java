package org.shutoffbench.harness.study.training;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.shutoffbench.controller.strategy.BlowFeatures;
import org.shutoffbench.controller.strategy.QuadraticModel;

/**
 * Ridge regression of what the energy balance leaves unexplained on a quadratic in standardised features
 * ({@code Hoerl1970} in docs/references.md): minimises sum (y - c'x)^2 + penalty n sum c_i^2, the constant not penalised.
 */
final class RidgeFit {

    /** A feature that hardly varies is not blown up. */
    private static final double LEAST_SCALE = 1e-3;

    private final double[] means;
    private final double[] scales;
    private final double[] coefficients;

    private RidgeFit(double[] means, double[] scales, double[] coefficients) {
        this.means = means;
        this.scales = scales;
        this.coefficients = coefficients;
    }

    /** Means of the features over the training blows. */
    double[] means() {
        return means.clone();
    }

    /** Standard deviations of the features. */
    double[] scales() {
        return scales.clone();
    }

    /** Of the terms, N m. */
    double[] coefficients() {
        return coefficients.clone();
    }

    static RidgeFit of(List<Blow> blows, double penalty) {
        double[] means = new double[BlowFeatures.COUNT];
        double[] scales = new double[BlowFeatures.COUNT];
        for (int i = 0; i < means.length; i++) {
            int feature = i;
            means[i] = blows.stream().mapToDouble(b -> b.features()[feature]).sum() / blows.size();
            double mean = means[i];
            double squares = blows.stream()
                    .mapToDouble(b -> (b.features()[feature] - mean) * (b.features()[feature] - mean))
                    .sum();
            scales[i] = Math.max(LEAST_SCALE, Math.sqrt(squares / blows.size()));
        }
        return new RidgeFit(means, scales, solve(blows, means, scales, penalty));
    }

    private static double[] solve(List<Blow> blows, double[] means, double[] scales, double penalty) {
        int n = QuadraticModel.TERMS;
        DMatrixRMaj normal = new DMatrixRMaj(n, n);
        DMatrixRMaj right = new DMatrixRMaj(n, 1);
        double[] terms = new double[n];
        for (Blow blow : blows) {
            QuadraticModel.terms(standardised(blow, means, scales), terms);
            DMatrixRMaj x = DMatrixRMaj.wrap(n, 1, terms);
            CommonOps_DDRM.multAddTransB(x, x, normal);
            CommonOps_DDRM.addEquals(right, blow.middleNm() - blow.balanceNm(), x);
        }
        for (int i = 1; i < n; i++) {
            normal.add(i, i, penalty * blows.size());
        }
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(n);
        DMatrixRMaj solution = new DMatrixRMaj(n, 1);
        if (!solver.setA(normal)) {
            throw new IllegalArgumentException("the training joints do not determine the coefficients");
        }
        solver.solve(right, solution);
        return solution.getData().clone();
    }

    private static double[] standardised(Blow blow, double[] means, double[] scales) {
        double[] z = new double[means.length];
        for (int i = 0; i < z.length; i++) {
            double value = (blow.features()[i] - means[i]) / scales[i];
            z[i] = Math.max(-QuadraticModel.CUT, Math.min(QuadraticModel.CUT, value));
        }
        return z;
    }

    /** What the model says of the middle at a blow, N m. */
    double middleNm(Blow blow) {
        double[] terms = new double[QuadraticModel.TERMS];
        QuadraticModel.terms(standardised(blow, means, scales), terms);
        double sum = blow.balanceNm();
        for (int t = 0; t < terms.length; t++) {
            sum += coefficients[t] * terms[t];
        }
        return sum;
    }

    /** Root mean square error over blows, N m. */
    double errorNm(List<Blow> blows) {
        double squares = blows.stream()
                .mapToDouble(b -> (middleNm(b) - b.middleNm()) * (middleNm(b) - b.middleNm()))
                .sum();
        return Math.sqrt(squares / blows.size());
    }

    /** Share of the truth's variance over blows that the model explains; 0 is chance, below 0 is worse than the mean. */
    double explained(List<Blow> blows) {
        double mean = blows.stream().mapToDouble(Blow::middleNm).average().orElseThrow();
        double variance = blows.stream()
                        .mapToDouble(b -> (b.middleNm() - mean) * (b.middleNm() - mean))
                        .sum()
                / blows.size();
        return 1 - errorNm(blows) * errorNm(blows) / variance;
    }

    /** The settings of the learned strategy, rounded to the float that it calculates with. */
    Map<String, Double> settings() {
        Map<String, Double> settings = new LinkedHashMap<>();
        for (int i = 0; i < means.length; i++) {
            settings.put(QuadraticModel.mean(i), single(means[i]));
            settings.put(QuadraticModel.scale(i), single(scales[i]));
        }
        for (int t = 0; t < coefficients.length; t++) {
            settings.put(QuadraticModel.coefficient(t), single(coefficients[t]));
        }
        return settings;
    }

    /** The shortest decimal number that the strategy reads as the same float. */
    private static double single(double value) {
        return Double.parseDouble(Float.toString((float) value));
    }
}
