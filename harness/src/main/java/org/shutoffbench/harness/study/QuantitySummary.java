package org.shutoffbench.harness.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How one quantity came out in a cell.
 *
 * @param unit "N*m" or "N"
 * @param n joints
 * @param mean with a t interval, by cluster where joints are clustered
 * @param sd standard deviation, with a chi-square interval (normal theory)
 * @param smallest least value
 * @param greatest greatest value
 * @param points 0.135, 50 and 99.865 % points with order-statistic intervals; an end that too few joints leave open is
 *     null
 * @param tolerance the interval to show, with the reason for its kind
 * @param normalTolerance by the exact normal factor; null below two joints
 * @param freeTolerance distribution-free; null where too few joints ran
 * @param lag1 correlation of neighbouring joint numbers; null where it cannot be estimated
 * @param capability percentile-form capability; null where it must not be printed
 * @param capabilityWithheld why no capability is printed; null where one is
 * @param variance by lot, piece and repeat; null where the design cannot tell them apart
 * @param ecdf cumulative share of joints, ascending in value, at most 257 points
 */
public record QuantitySummary(
        String unit,
        long n,
        Estimate mean,
        Estimate sd,
        double smallest,
        double greatest,
        List<Point> points,
        @Nullable Tolerance tolerance,
        @Nullable Tolerance normalTolerance,
        @Nullable Tolerance freeTolerance,
        @Nullable Double lag1,
        @Nullable Capability capability,
        @Nullable String capabilityWithheld,
        @Nullable Variance variance,
        List<Step> ecdf) {

    public QuantitySummary {
        points = List.copyOf(points);
        ecdf = List.copyOf(ecdf);
    }

    /**
     * A percentage point.
     *
     * @param percent 0 to 100
     * @param value with its interval
     */
    public record Point(double percent, Estimate value) {}

    /**
     * A two-sided tolerance interval.
     *
     * @param kind "normal" or "distribution-free"
     * @param reason why this kind, in words
     * @param content share of joints it holds
     * @param confidence with which it holds them
     * @param low null where open
     * @param high null where open
     */
    public record Tolerance(
            String kind,
            String reason,
            double content,
            double confidence,
            @Nullable Double low,
            @Nullable Double high) {}

    /**
     * Percentile-form capability against the judge's window.
     *
     * @param spread window over the span from the 0.135 to the 99.865 % point
     * @param worstSide the smaller of the two one-sided ratios from the median
     */
    public record Capability(Estimate spread, Estimate worstSide) {}

    /**
     * Variance components; a negative estimate is set to 0.
     *
     * @param lot variance between lots, unit squared; null where there is one lot or each joint is its own
     * @param piece variance between pieces of a lot; null where no piece is repeated and pieces cannot be told from
     *     repeats
     * @param repeat variance of the same piece tightened again, or of all below lots where no piece is repeated
     */
    public record Variance(@Nullable Double lot, @Nullable Double piece, double repeat) {}

    /**
     * A step of the cumulative share.
     *
     * @param value of the quantity
     * @param share of joints at or below it, 0 to 1
     */
    public record Step(double value, double share) {}
}
