package org.shutoffbench.joint.friction;

/**
 * Friction of thread and bearing face together: the bearing face follows the thread by a ratio that scatters by itself, so
 * the two are correlated and one draw serves common causes such as the lubricant.
 *
 * @param thread mu_th
 * @param bearingOverThread mu_b/mu_th
 * @param retightening change when the joint is tightened again
 */
public record FrictionScatter(Scatter thread, Scatter bearingOverThread, Retightening retightening) {

    /** Median of mu_b. */
    public double bearingMedian() {
        return thread.median() * bearingOverThread.median();
    }

    /** Coefficient of variation of mu_b, all levels together. */
    public double bearingCv() {
        return Scatter.cv(Math.hypot(thread.totalSigma(), bearingOverThread.totalSigma()));
    }

    /** Correlation between the logarithms of mu_th and mu_b; 1 where nothing scatters. */
    public double logCorrelation() {
        double common = thread.totalSigma();
        double both = Math.hypot(common, bearingOverThread.totalSigma());
        return both == 0 ? 1 : common / both;
    }
}
