package org.shutoffbench.harness.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.study.Rate;

/** Numbers as people read them on the page: one decimal for rates, a real minus sign, never a rounded 0 or 100 %. */
public final class Printed {

    static final String MINUS = "\u2212";
    static final String OPEN = "open";
    private static final int MOST_DECIMALS = 6;

    private Printed() {}

    /** A rate in percent, without the sign; "0" and "100" only where none or all of the joints are meant. */
    public static String percent(Rate rate) {
        return percent(rate.estimate());
    }

    /** A share in percent: one decimal, more where the rounded text would read 0 or 100 without being so. */
    public static String percent(double share) {
        if (share <= 0) {
            return "0";
        }
        if (share >= 1) {
            return "100";
        }
        for (int decimals = 1; decimals < MOST_DECIMALS; decimals++) {
            BigDecimal rounded = rounded(100 * share, decimals);
            if (rounded.signum() > 0 && rounded.compareTo(BigDecimal.valueOf(100)) < 0) {
                return rounded.toPlainString();
            }
        }
        return share < 0.5 ? "<0.00001" : ">99.99999";
    }

    /** An interval of a rate in percent, such as "98.6–99.9". */
    static String interval(Rate rate) {
        return percent(rate.low()) + "\u2013" + percent(rate.high());
    }

    /** A rate in percent with its interval in brackets, such as "99.2 (98.6–99.9)". */
    static String withInterval(Rate rate) {
        return percent(rate) + " (" + interval(rate) + ")";
    }

    /** A value with its interval in brackets, such as "1.20 (1.05 to 1.31)"; "open" where there is no number. */
    static String withInterval(@Nullable Double value, @Nullable Double low, @Nullable Double high, int decimals) {
        return fixed(value, decimals) + " (" + fixed(low, decimals) + " to " + fixed(high, decimals) + ")";
    }

    /** A difference of shares in points with its bounds in brackets. */
    static String pointsWithBounds(double difference, double low, double high) {
        return points(difference) + " (" + points(low) + " to " + points(high) + ")";
    }

    /** A difference of shares in points, with its sign. */
    static String points(double difference) {
        return signed(100 * difference, 1);
    }

    /** A number with a sign, also where it is positive; zero carries none. */
    static String signed(double value, int decimals) {
        BigDecimal rounded = rounded(value, decimals);
        return switch (rounded.signum()) {
            case 1 -> "+" + rounded.toPlainString();
            case -1 -> MINUS + rounded.abs().toPlainString();
            default -> rounded.abs().toPlainString();
        };
    }

    /** A number with fixed decimals. */
    static String fixed(double value, int decimals) {
        BigDecimal rounded = rounded(value, decimals);
        return rounded.signum() < 0
                ? MINUS + rounded.abs().toPlainString()
                : rounded.abs().toPlainString();
    }

    /** The same, "open" where there is none. */
    static String fixed(@Nullable Double value, int decimals) {
        return value == null ? OPEN : fixed(value.doubleValue(), decimals);
    }

    /** A count of some, with "none" and "all" where they apply: "none of 500", "all 500", "12 of 500". */
    static String countOf(long count, long n) {
        if (count == 0) {
            return "none of " + n;
        }
        return count == n ? "all " + n : count + " of " + n;
    }

    /** Names in a row: "A", "A and B", "A, B and C". */
    static String list(List<String> names) {
        if (names.size() < 2) {
            return String.join("", names);
        }
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    /** A text that begins a sentence. */
    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** A share that stands for a level, such as 0.95, in percent without idle decimals. */
    static String level(double share) {
        return BigDecimal.valueOf(share)
                .multiply(BigDecimal.valueOf(100))
                .round(new MathContext(5))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** Units as written on the page: "N*m" and "N m" become "N·m". */
    static String unit(String text) {
        return text.replace('*', '\u00b7').replaceAll("\\bN m\\b", "N\u00b7m");
    }

    private static BigDecimal rounded(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
