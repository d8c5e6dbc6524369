package org.shutoffbench.draw;

/**
 * Inverse of the standard normal distribution function by the rational approximations PPND16 of [Wichura1988] (algorithm AS
 * 241), relative error of the approximation about 1e-16.
 *
 * <p>Only basic arithmetic, {@code StrictMath.log} and square root are used: the same bits on every machine.
 */
@SuppressWarnings("FloatingPointLiteralPrecision") // coefficients with all the digits that were published
public final class NormalQuantile {

    private static final double CENTRAL_HALF_WIDTH = 0.425;
    private static final double CENTRAL_SQUARE = 0.180625;
    private static final double FAR_TAIL = 5;
    private static final double NEAR_TAIL_CENTRE = 1.6;

    private static final double[] CENTRAL_TOP = {
        3.3871328727963666080e0,
        1.3314166789178437745e+2,
        1.9715909503065514427e+3,
        1.3731693765509461125e+4,
        4.5921953931549871457e+4,
        6.7265770927008700853e+4,
        3.3430575583588128105e+4,
        2.5090809287301226727e+3
    };
    private static final double[] CENTRAL_BOTTOM = {
        1.0,
        4.2313330701600911252e+1,
        6.8718700749205790830e+2,
        5.3941960214247511077e+3,
        2.1213794301586595867e+4,
        3.9307895800092710610e+4,
        2.8729085735721942674e+4,
        5.2264952788528545610e+3
    };
    private static final double[] NEAR_TOP = {
        1.42343711074968357734e0,
        4.63033784615654529590e0,
        5.76949722146069140550e0,
        3.64784832476320460504e0,
        1.27045825245236838258e0,
        2.41780725177450611770e-1,
        2.27238449892691845833e-2,
        7.74545014278341407640e-4
    };
    private static final double[] NEAR_BOTTOM = {
        1.0,
        2.05319162663775882187e0,
        1.67638483018380384940e0,
        6.89767334985100004550e-1,
        1.48103976427480074590e-1,
        1.51986665636164571966e-2,
        5.47593808499534494600e-4,
        1.05075007164441684324e-9
    };
    private static final double[] FAR_TOP = {
        6.65790464350110377720e0,
        5.46378491116411436990e0,
        1.78482653991729133580e0,
        2.96560571828504891230e-1,
        2.65321895265761230930e-2,
        1.24266094738807843860e-3,
        2.71155556874348757815e-5,
        2.01033439929228813265e-7
    };
    private static final double[] FAR_BOTTOM = {
        1.0,
        5.99832206555887937690e-1,
        1.36929880922735805310e-1,
        1.48753612908506148525e-2,
        7.86869131145613259100e-4,
        1.84631831751005468180e-5,
        1.42151175831644588870e-7,
        2.04426310338993978564e-15
    };

    private NormalQuantile() {}

    /**
     * The number below which a standard normal falls with a given probability. Relative error at most 1e-15 (tested).
     *
     * @param probability in [0, 1]; 0 gives minus infinity, 1 plus infinity; NaN or a number outside gives NaN
     */
    public static double at(double probability) {
        double fromMiddle = probability - 0.5;
        if (Math.abs(fromMiddle) <= CENTRAL_HALF_WIDTH) {
            double r = CENTRAL_SQUARE - fromMiddle * fromMiddle;
            return fromMiddle * polynomial(CENTRAL_TOP, r) / polynomial(CENTRAL_BOTTOM, r);
        }
        double tail = fromMiddle < 0 ? probability : 1 - probability;
        double size = tailSize(tail);
        return fromMiddle < 0 ? -size : size;
    }

    private static double tailSize(double tail) {
        if (tail == 0) {
            return Double.POSITIVE_INFINITY;
        }
        double r = Math.sqrt(-StrictMath.log(tail));
        if (r <= FAR_TAIL) {
            double s = r - NEAR_TAIL_CENTRE;
            return polynomial(NEAR_TOP, s) / polynomial(NEAR_BOTTOM, s);
        }
        double s = r - FAR_TAIL;
        return polynomial(FAR_TOP, s) / polynomial(FAR_BOTTOM, s);
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            sum = sum * x + coefficients[k];
        }
        return sum;
    }
}
