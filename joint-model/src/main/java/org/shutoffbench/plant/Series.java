package org.shutoffbench.plant;

/**
 * Truncated Taylor series in scaled time tau = (t - base) / step: coefficient k multiplies tau^k. Evaluation, bounds and
 * the search for the first fall through zero, which is what every event is.
 */
final class Series {

    /** Highest power kept. */
    static final int ORDER = 12;

    /** 1 / k; entry 0 is unused. */
    static final double[] RECIPROCAL = reciprocals();

    /** No event in the interval. */
    static final double NEVER = Double.POSITIVE_INFINITY;

    /** Step times rate over order: what one more power shrinks a term by. */
    private static final double NEXT_TERM_RATIO = 0.2;

    private static final int DEEPEST_BISECTION = 50;

    private Series() {}

    private static double[] reciprocals() {
        double[] all = new double[ORDER + 2];
        for (int k = 1; k < all.length; k++) {
            all[k] = 1.0 / k;
        }
        return all;
    }

    static double[] allocate() {
        return new double[ORDER + 1];
    }

    static double value(double[] c, double tau) {
        double sum = c[ORDER];
        for (int k = ORDER - 1; k >= 0; k--) {
            sum = Math.fma(sum, tau, c[k]);
        }
        return sum;
    }

    /**
     * Size of the last terms: the very last may vanish by symmetry (a swing from rest has odd powers only), the one before
     * then stands for it.
     */
    static double tail(double[] c) {
        return Math.abs(c[ORDER]) + NEXT_TERM_RATIO * Math.abs(c[ORDER - 1]);
    }

    /** Greatest possible distance from the constant term within [0, tau]. */
    static double excursion(double[] c, double tau) {
        double sum = Math.abs(c[ORDER]);
        for (int k = ORDER - 1; k >= 1; k--) {
            sum = Math.fma(sum, tau, Math.abs(c[k]));
        }
        return sum * tau;
    }

    /**
     * First tau in [from, to] at which {@code sign * (c(tau) - level)} falls below zero; a value that starts at zero or
     * a rounding error below it and rises is watched from its rise on.
     *
     * @param scratch receives the watched polynomial
     * @return the instant, or {@link #NEVER}
     */
    static double firstFall(double[] c, double sign, double level, double from, double to, double[] scratch) {
        double start = sign * (c[0] - level);
        if (from == 0 && start > 0 && start > excursion(c, to)) {
            return NEVER;
        }
        int power = 0;
        int highest = ORDER;
        if (from == 0 && start == 0) {
            // divide by tau until the constant term shows which way the function leaves zero
            power = 1;
            while (power <= ORDER && c[power] == 0) {
                power++;
            }
            if (power > ORDER) {
                return NEVER;
            }
            highest = ORDER - power;
            for (int k = 0; k <= highest; k++) {
                scratch[k] = sign * c[k + power];
            }
        } else {
            scratch[0] = start;
            for (int k = 1; k <= ORDER; k++) {
                scratch[k] = sign * c[k];
            }
        }
        return search(scratch, highest, from, to);
    }

    private static double search(double[] g, int n, double from, double to) {
        double left = from;
        double atLeft = value(g, n, left);
        if (atLeft < 0) {
            return from;
        }
        double curvature = 0;
        for (int k = n; k >= 2; k--) {
            curvature = Math.fma(curvature, to, k * (k - 1) * Math.abs(g[k]));
        }
        // walk from the left in intervals on which the chord and the curvature bound decide
        double width = to - from;
        int halvings = 0;
        while (left < to) {
            double right = Math.min(to, left + width);
            double atRight = value(g, n, right);
            double sag = 0.125 * curvature * (right - left) * (right - left);
            if (Math.min(atLeft, atRight) > sag) {
                left = right;
                atLeft = atRight;
                width = 2 * width;
                halvings = Math.max(0, halvings - 1);
            } else if (atRight < 0 && isMonotone(g, n, left, right, curvature)) {
                return crossing(g, n, left, right);
            } else if (halvings < DEEPEST_BISECTION) {
                width = 0.5 * (right - left);
                halvings++;
            } else if (atRight < 0) {
                return right;
            } else {
                left = right;
                atLeft = atRight;
            }
        }
        return NEVER;
    }

    private static boolean isMonotone(double[] g, int n, double left, double right, double curvature) {
        double turn = -curvature * (right - left);
        return slope(g, n, left) < turn || slope(g, n, right) < turn;
    }

    /** The only zero of a falling function between left (not negative) and right (negative). */
    private static double crossing(double[] g, int n, double from, double to) {
        double left = from;
        double right = to;
        double atLeft = value(g, n, left);
        double atRight = value(g, n, right);
        double tau = left + (right - left) * atLeft / (atLeft - atRight);
        for (int i = 0; i < 60; i++) {
            double at = value(g, n, tau);
            if (at >= 0) {
                left = tau;
            } else {
                right = tau;
            }
            double next = tau - at / slope(g, n, tau);
            if (!(next >= left && next <= right)) {
                next = 0.5 * (left + right);
            }
            if (Math.abs(next - tau) <= 1e-15 * to || right - left <= 1e-15 * to) {
                return next;
            }
            tau = next;
        }
        return tau;
    }

    private static double value(double[] g, int n, double tau) {
        double sum = g[n];
        for (int k = n - 1; k >= 0; k--) {
            sum = Math.fma(sum, tau, g[k]);
        }
        return sum;
    }

    private static double slope(double[] g, int n, double tau) {
        double sum = n * g[n];
        for (int k = n - 1; k >= 1; k--) {
            sum = Math.fma(sum, tau, k * g[k]);
        }
        return n == 0 ? 0 : sum;
    }
}
