package org.shutoffbench.sensor;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.NormOps_DDRM;

/**
 * One time step of a linear system of first or second order, exact for an input that changes linearly over the step.
 * State: value y and speed w = y' times the step (0 for first order).
 *
 * <p>y1 = yy y + yw w + y0 u0 + y1 u1, w1 likewise, with u0 and u1 the input at the step's ends.
 */
record LinearStep(
        double yFromY,
        double yFromW,
        double yFromStart,
        double yFromEnd,
        double wFromY,
        double wFromW,
        double wFromStart,
        double wFromEnd) {

    private static final int TAYLOR_TERMS = 20;

    /** The step of a low pass with gain 1; passes the input on where there is no limit. */
    static LinearStep of(LowPass lowPass, double stepS) {
        double angle = 2 * Math.PI * lowPass.cutoffHz() * stepS;
        return switch (lowPass.order()) {
            case 0 -> new LinearStep(0, 0, 0, 1, 0, 0, 0, 0);
            case 1 -> firstOrder(angle);
            default -> secondOrder(Math.sqrt(2) * angle, angle * angle, angle * angle);
        };
    }

    /** The step of inertia y'' + damping y' + stiffness y = u. */
    static LinearStep oscillator(double inertia, double damping, double stiffness, double stepS) {
        double perInertia = stepS / inertia;
        return secondOrder(damping * perInertia, stiffness * perInertia * stepS, perInertia * stepS);
    }

    private static LinearStep firstOrder(double rate) {
        double decay = StrictMath.exp(-rate);
        double mean = -StrictMath.expm1(-rate) / rate;
        return new LinearStep(decay, 0, mean - decay, 1 - mean, 0, 0, 0, 0);
    }

    /** With time counted in steps: y'' = -damping y' - stiffness y + gain u, u = u0 + (u1 - u0) t. */
    private static LinearStep secondOrder(double damping, double stiffness, double gain) {
        DMatrixRMaj rates = new DMatrixRMaj(
                new double[][] {{0, 1, 0, 0}, {-stiffness, -damping, gain, 0}, {0, 0, 0, 1}, {0, 0, 0, 0}});
        DMatrixRMaj e = exponential(rates);
        return new LinearStep(
                e.get(0, 0),
                e.get(0, 1),
                e.get(0, 2) - e.get(0, 3),
                e.get(0, 3),
                e.get(1, 0),
                e.get(1, 1),
                e.get(1, 2) - e.get(1, 3),
                e.get(1, 3));
    }

    /** Matrix exponential: Taylor series of a matrix halved until it is small, squared back. */
    private static DMatrixRMaj exponential(DMatrixRMaj matrix) {
        int halvings = Math.max(0, Math.getExponent(NormOps_DDRM.inducedPInf(matrix)) + 2);
        DMatrixRMaj scaled = matrix.copy();
        CommonOps_DDRM.scale(StrictMath.scalb(1.0, -halvings), scaled);
        DMatrixRMaj identity = CommonOps_DDRM.identity(matrix.getNumRows());
        DMatrixRMaj sum = identity.copy();
        DMatrixRMaj product = identity.createLike();
        for (int k = TAYLOR_TERMS; k >= 1; k--) {
            CommonOps_DDRM.mult(1.0 / k, scaled, sum, product);
            CommonOps_DDRM.add(identity, product, sum);
        }
        for (int i = 0; i < halvings; i++) {
            CommonOps_DDRM.mult(sum, sum, product);
            sum.setTo(product);
        }
        return sum;
    }
}
