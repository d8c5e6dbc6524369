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

    /** Roots are sought to this part of the step. */
    private static final double ROUNDING = 1e-15;

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

    /** The series at tau; written out pairwise (Estrin), as a loop over so few terms costs more than its sums. */
    static double value(double[] c, double tau) {
        double t2 = tau * tau;
        double t4 = t2 * t2;
        double a0 = Math.fma(c[1], tau, c[0]);
        double a1 = Math.fma(c[3], tau, c[2]);
        double a2 = Math.fma(c[5], tau, c[4]);
        double a3 = Math.fma(c[7], tau, c[6]);
        double a4 = Math.fma(c[9], tau, c[8]);
        double a5 = Math.fma(c[11], tau, c[10]);
        double low = Math.fma(Math.fma(a3, t2, a2), t4, Math.fma(a1, t2, a0));
        double high = Math.fma(c[12], t4, Math.fma(a5, t2, a4));
        return Math.fma(high, t4 * t4, low);
    }

    /** Its slope at tau. */
    static double slope(double[] c, double tau) {
        double t2 = tau * tau;
        double t4 = t2 * t2;
        double a0 = Math.fma(2 * c[2], tau, c[1]);
        double a1 = Math.fma(4 * c[4], tau, 3 * c[3]);
        double a2 = Math.fma(6 * c[6], tau, 5 * c[5]);
        double a3 = Math.fma(8 * c[8], tau, 7 * c[7]);
        double a4 = Math.fma(10 * c[10], tau, 9 * c[9]);
        double a5 = Math.fma(12 * c[12], tau, 11 * c[11]);
        double low = Math.fma(Math.fma(a3, t2, a2), t4, Math.fma(a1, t2, a0));
        return Math.fma(Math.fma(a5, t2, a4), t4 * t4, low);
    }

    /** Bound on the slope's size within [0, tau]. */
    static double steepest(double[] c, double tau) {
        double t2 = tau * tau;
        double t4 = t2 * t2;
        double a0 = Math.fma(2 * Math.abs(c[2]), tau, Math.abs(c[1]));
        double a1 = Math.fma(4 * Math.abs(c[4]), tau, 3 * Math.abs(c[3]));
        double a2 = Math.fma(6 * Math.abs(c[6]), tau, 5 * Math.abs(c[5]));
        double a3 = Math.fma(8 * Math.abs(c[8]), tau, 7 * Math.abs(c[7]));
        double a4 = Math.fma(10 * Math.abs(c[10]), tau, 9 * Math.abs(c[9]));
        double a5 = Math.fma(12 * Math.abs(c[12]), tau, 11 * Math.abs(c[11]));
        double low = Math.fma(Math.fma(a3, t2, a2), t4, Math.fma(a1, t2, a0));
        return Math.fma(Math.fma(a5, t2, a4), t4 * t4, low);
    }

    /** Bound within [0, tau] on how far the second derivative strays from its value at 0. */
    static double bend(double[] c, double tau) {
        double t2 = tau * tau;
        double t4 = t2 * t2;
        double a1 = Math.fma(12 * Math.abs(c[4]), tau, 6 * Math.abs(c[3]));
        double a2 = Math.fma(30 * Math.abs(c[6]), tau, 20 * Math.abs(c[5]));
        double a3 = Math.fma(56 * Math.abs(c[8]), tau, 42 * Math.abs(c[7]));
        double a4 = Math.fma(90 * Math.abs(c[10]), tau, 72 * Math.abs(c[9]));
        double a5 = Math.fma(132 * Math.abs(c[12]), tau, 110 * Math.abs(c[11]));
        double low = Math.fma(Math.fma(a4, t2, a3), t4, Math.fma(a2, t2, a1));
        return tau * Math.fma(a5, t4 * t4, low);
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
        double t2 = tau * tau;
        double t4 = t2 * t2;
        double a0 = Math.fma(Math.abs(c[2]), tau, Math.abs(c[1]));
        double a1 = Math.fma(Math.abs(c[4]), tau, Math.abs(c[3]));
        double a2 = Math.fma(Math.abs(c[6]), tau, Math.abs(c[5]));
        double a3 = Math.fma(Math.abs(c[8]), tau, Math.abs(c[7]));
        double a4 = Math.fma(Math.abs(c[10]), tau, Math.abs(c[9]));
        double a5 = Math.fma(Math.abs(c[12]), tau, Math.abs(c[11]));
        double low = Math.fma(Math.fma(a3, t2, a2), t4, Math.fma(a1, t2, a0));
        return tau * Math.fma(Math.fma(a5, t2, a4), t4 * t4, low);
    }

    /** Chord and curvature alone show that the series stays between two limits on [0, tau]. */
    static boolean staysWithin(double[] c, double low, double high, double tau) {
        double end = value(c, tau);
        double rest = bend(c, tau);
        double part = 0.125 * tau * tau;
        return Math.min(c[0], end) - part * Math.max(0, rest + 2 * c[2]) > low
                && Math.max(c[0], end) + part * Math.max(0, rest - 2 * c[2]) < high;
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
        if (start > 0 && start > excursion(c, to)) {
            return NEVER;
        }
        int power = 0;
        if (from == 0 && start == 0) {
            // divide by tau until the constant term shows which way the function leaves zero
            power = 1;
            while (power <= ORDER && c[power] == 0) {
                power++;
            }
            if (power > ORDER) {
                return NEVER;
            }
            for (int k = 0; k <= ORDER; k++) {
                scratch[k] = k + power <= ORDER ? sign * c[k + power] : 0;
            }
        } else {
            scratch[0] = start;
            for (int k = 1; k <= ORDER; k++) {
                scratch[k] = sign * c[k];
            }
        }
        return search(scratch, from, to);
    }

    private static double search(double[] g, double from, double to) {
        double left = from;
        double atLeft = left == 0 ? g[0] : value(g, left);
        if (atLeft < 0) {
            return from;
        }
        // walk from the left in intervals on which bounds of the second derivative decide
        double right = to;
        int halvings = 0;
        while (left < to) {
            double atRight = value(g, right);
            double width = right - left;
            double rest = bend(g, right);
            double up = Math.max(0, rest + 2 * g[2]);
            double down = Math.max(0, rest - 2 * g[2]);
            boolean isBelow = atRight < 0;
            if (isBelow ? fallsOnce(g, left, right, up, down) : staysAbove(g, left, atLeft, right, atRight, up, down)) {
                if (isBelow) {
                    return crossing(g, left, atLeft, right, atRight, Math.max(up, down));
                }
                left = right;
                atLeft = atRight;
                right = Math.min(to, left + 2 * width);
                halvings = Math.max(0, halvings - 1);
            } else if (halvings < DEEPEST_BISECTION) {
                right = left + 0.5 * width;
                halvings++;
            } else if (isBelow) {
                return right;
            } else {
                left = right;
                atLeft = atRight;
                right = Math.min(to, left + width);
            }
        }
        return NEVER;
    }

    /** A function that is not negative at left and negative at right has one zero between: it is concave or only falls. */
    private static boolean fallsOnce(double[] g, double left, double right, double up, double down) {
        double width = right - left;
        return up == 0 || slope(g, left) < -up * width || slope(g, right) < -down * width;
    }

    /** A function that is not negative at either end is not between: it stays near its chord or has no turning point. */
    private static boolean staysAbove(
            double[] g, double left, double atLeft, double right, double atRight, double up, double down) {
        double width = right - left;
        if (up == 0 || Math.min(atLeft, atRight) > 0.125 * up * width * width) {
            return true;
        }
        double atStart = slope(g, left);
        double atEnd = slope(g, right);
        return atStart >= down * width || atStart <= -up * width || atEnd >= up * width || atEnd <= -down * width;
    }

    /** The only zero of a falling function between left (not negative) and right (negative). */
    private static double crossing(double[] g, double from, double atFrom, double to, double atTo, double curvature) {
        double left = from;
        double right = to;
        double tau = left + (right - left) * atFrom / (atFrom - atTo);
        for (int i = 0; i < 60; i++) {
            double at = value(g, tau);
            if (at >= 0) {
                left = tau;
            } else {
                right = tau;
            }
            double slope = slope(g, tau);
            double next = tau - at / slope;
            boolean isNewton = next >= left && next <= right;
            if (!isNewton) {
                next = 0.5 * (left + right);
            }
            double step = next - tau;
            // what Newton's step leaves is at most half the curvature over the slope times its square
            if (right - left <= ROUNDING * to
                    || (isNewton && curvature * step * step <= ROUNDING * to * Math.abs(slope))) {
                return next;
            }
            tau = next;
        }
        return tau;
    }
}
