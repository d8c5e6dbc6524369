package org.shutoffbench.harness.statistics;

/**
 * Bounds of the difference of two rates on the same joints: Tango's score interval (source: Tango1998), stretched to hold
 * 0 where the exact McNemar test at the same level does not reject, so that bounds and test never contradict each other.
 */
public final class PairedRateDifference {

    private PairedRateDifference() {}

    /**
     * The two-sided interval of p_first - p_second.
     *
     * @param onlyFirst joints where the first alone succeeded
     * @param onlySecond joints where the second alone succeeded
     * @param n joints that both ran, at least 1
     */
    public static Interval bounds(long onlyFirst, long onlySecond, long n, double confidence) {
        Interval score = score(onlyFirst, onlySecond, n, confidence);
        if (McNemar.EXACT.p(onlyFirst, onlySecond) <= 1 - confidence) {
            return score;
        }
        return new Interval(Math.min(0, score.low()), Math.max(0, score.high()));
    }

    /** Tango's score interval alone. */
    public static Interval score(long onlyFirst, long onlySecond, long n, double confidence) {
        Levels.probability(confidence, "confidence");
        Levels.atLeast(n, 1, "n");
        Levels.atLeast(onlyFirst, 0, "onlyFirst");
        Levels.atLeast(onlySecond, 0, "onlySecond");
        Levels.atLeast(n - onlyFirst - onlySecond, 0, "n - onlyFirst - onlySecond");
        double z = StandardNormal.twoSided(confidence);
        double estimate = (double) (onlyFirst - onlySecond) / n;
        double low = lastAbove(z, -1, estimate, onlyFirst, onlySecond, n);
        double high = lastAbove(-z, estimate, 1, onlyFirst, onlySecond, n);
        return new Interval(low, high);
    }

    /** Where the statistic, which falls, reaches a level: by bisection to the last bit. */
    private static double lastAbove(double level, double from, double to, long b, long c, long n) {
        double low = from;
        double high = to;
        for (int i = 0; i < 64; i++) {
            double middle = (low + high) / 2;
            if (statistic(b, c, n, middle) > level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Score statistic of the hypothesis p_first - p_second = delta; falls as delta grows. */
    private static double statistic(long b, long c, long n, double delta) {
        double a2 = 2.0 * n;
        double b2 = -b - c + (2.0 * n - b + c) * delta;
        double c2 = -c * delta * (1 - delta);
        double q21 = (Math.sqrt(b2 * b2 - 4 * a2 * c2) - b2) / (2 * a2);
        double variance = n * (2 * q21 + delta * (1 - delta));
        double score = b - c - n * delta;
        return score == 0 ? 0 : score / Math.sqrt(Math.max(variance, Double.MIN_NORMAL));
    }
}
