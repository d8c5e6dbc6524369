package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.statistics.Autocorrelation;
import org.shutoffbench.harness.statistics.ClusterInterval;
import org.shutoffbench.harness.statistics.ExactSample;
import org.shutoffbench.harness.statistics.FreeTolerance;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.NormalIntervals;
import org.shutoffbench.harness.statistics.OrderStatistics;
import org.shutoffbench.harness.statistics.QuantileRanks;
import org.shutoffbench.harness.statistics.StandardNormal;
import org.shutoffbench.harness.statistics.ToleranceFactor;

/**
 * Turns one quantity of one cell into its summary.
 *
 * <p>Where joints share lots or tools, intervals that assume independent joints are computed for the number of independent
 * joints that the sample is worth: n over the design effect of the mean.
 */
final class QuantityReport {

    private static final double OUTER = 0.00135;
    private static final int ECDF_STEPS = 256;

    private final Quantity quantity;
    private final ExactSample sample;
    private final OrderStatistics order;
    private final Judge judge;
    private final Methods methods;
    private final @Nullable ClusterTally widest;
    private final ClusterInterval mean;
    private final long worth;

    QuantityReport(Quantity quantity, CellAccumulator cell, Judge judge, Methods methods) {
        this.quantity = quantity;
        this.sample = cell.quantity(quantity);
        this.order = sample.orderStatistics();
        this.judge = judge;
        this.methods = methods;
        this.widest = widest(cell);
        this.mean = mean();
        this.worth = Math.max(1, Math.min(sample.n(), (long) (sample.n() / Math.max(1, mean.designEffect()))));
    }

    QuantitySummary summarise(QuantitySummary.@Nullable Variance variance) {
        QuantitySummary.Tolerance normal = normalTolerance();
        QuantitySummary.Tolerance free = freeTolerance();
        double lag1 = Autocorrelation.lag1(sample.keptByJoint());
        String withheld = capabilityWithheld(lag1);
        return new QuantitySummary(
                quantity.unit(),
                sample.n(),
                estimate(mean.estimate(), mean.interval()),
                sd(),
                sample.least(),
                sample.greatest(),
                List.of(point(OUTER), point(0.5), point(1 - OUTER)),
                shown(normal, free),
                normal,
                free,
                Double.isNaN(lag1) ? null : lag1,
                withheld == null ? capability() : null,
                withheld,
                variance,
                ecdf());
    }

    /** The clusters that widen the mean's interval most; null where joints are independent. */
    private @Nullable ClusterTally widest(CellAccumulator cell) {
        ClusterTally found = null;
        double width = -1;
        for (ClusterTally tally : cell.clusters()) {
            double reach = clustered(tally).interval().width();
            if (reach > width) {
                width = reach;
                found = tally;
            }
        }
        return found;
    }

    private ClusterInterval clustered(ClusterTally tally) {
        return tally.mean(quantity, sample.moments().variance(), methods.confidence());
    }

    private ClusterInterval mean() {
        if (widest != null) {
            return clustered(widest);
        }
        double value = sample.moments().mean();
        if (sample.n() < 2) {
            return new ClusterInterval(value, new Interval(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY), 1);
        }
        double standardError = sample.moments().standardDeviation() / Math.sqrt((double) sample.n());
        Interval interval = NormalIntervals.mean(value, standardError, sample.n() - 1.0, methods.confidence());
        return new ClusterInterval(value, interval, 1);
    }

    private Estimate sd() {
        if (sample.n() < 2) {
            return Estimate.NONE;
        }
        double s = sample.moments().standardDeviation();
        return worth < 2
                ? new Estimate(s, null, null)
                : estimate(s, NormalIntervals.sigma(s, worth, methods.confidence()));
    }

    private QuantitySummary.Point point(double p) {
        return new QuantitySummary.Point(
                Math.round(p * 1e5) / 1e3, bounded(order.quantile(p), pointBounds(p, methods.confidence())));
    }

    /** Order-statistic bounds of a percentage point, rounded outwards; infinite where open. */
    private Interval pointBounds(double p, double confidence) {
        QuantileRanks ranks = QuantileRanks.of(worth, p, confidence);
        return between(ranks);
    }

    private Interval between(QuantileRanks ofIndependent) {
        QuantileRanks ranks = ofIndependent.stretched(worth, sample.n());
        return new Interval(
                ranks.lower() < 1
                        ? Double.NEGATIVE_INFINITY
                        : order.ofRank(ranks.lower()).low(),
                ranks.upper() > sample.n()
                        ? Double.POSITIVE_INFINITY
                        : order.ofRank(ranks.upper()).high());
    }

    private QuantitySummary.@Nullable Tolerance normalTolerance() {
        if (worth < 2) {
            return null;
        }
        double reach = sample.moments().standardDeviation()
                * ToleranceFactor.EXACT.twoSided(worth, methods.toleranceContent(), methods.toleranceConfidence());
        double centre = sample.moments().mean();
        return tolerance("normal", "assumes a normal population", new Interval(centre - reach, centre + reach));
    }

    private QuantitySummary.Tolerance freeTolerance() {
        Interval interval =
                between(FreeTolerance.ranks(worth, methods.toleranceContent(), methods.toleranceConfidence()));
        return tolerance("distribution-free", "assumes nothing about the population", interval);
    }

    private QuantitySummary.Tolerance shown(
            QuantitySummary.@Nullable Tolerance normal, QuantitySummary.Tolerance free) {
        long needed = FreeTolerance.leastSample(2, methods.toleranceContent(), methods.toleranceConfidence());
        String worthOf =
                widest == null ? "" : ", joints counted " + widest.title() + " as " + worth + " independent ones";
        if (worth >= needed) {
            return withReason(free, "distribution-free: " + sample.n() + " joints suffice for it" + worthOf);
        }
        if (normal == null || sample.least() <= 0) {
            return withReason(
                    free,
                    "open: fewer than the " + needed + " joints that a distribution-free interval needs, and "
                            + (normal == null
                                    ? "too few for any other"
                                    : "joints without any clamp force are not normal")
                            + worthOf);
        }
        return withReason(
                normal,
                "normal: fewer than the " + needed + " joints that a distribution-free interval needs; assumes a normal"
                        + " population" + worthOf);
    }

    private QuantitySummary.Tolerance tolerance(String kind, String reason, Interval interval) {
        return new QuantitySummary.Tolerance(
                kind,
                reason,
                methods.toleranceContent(),
                methods.toleranceConfidence(),
                finite(interval.low()),
                finite(interval.high()));
    }

    private static QuantitySummary.Tolerance withReason(QuantitySummary.Tolerance tolerance, String reason) {
        return new QuantitySummary.Tolerance(
                tolerance.kind(),
                reason,
                tolerance.content(),
                tolerance.confidence(),
                tolerance.low(),
                tolerance.high());
    }

    private @Nullable String capabilityWithheld(double lag1) {
        if (quantity != judge.quantity()) {
            return "the window is on " + judge.quantity().title();
        }
        long needed = FreeTolerance.successRun(1 - OUTER, (1 + methods.confidence()) / 2);
        if (sample.n() < needed) {
            return "below " + needed + " joints the outer points stay open";
        }
        if (widest != null) {
            return "joints share lots or tools: they are not a sample of independent joints";
        }
        double limit = StandardNormal.twoSided(0.99) / Math.sqrt((double) Math.min(sample.n(), ExactSample.KEPT));
        if (Math.abs(lag1) > limit) {
            return "neighbouring joints are correlated";
        }
        if (!(order.quantile(OUTER) < order.quantile(0.5) && order.quantile(0.5) < order.quantile(1 - OUTER))) {
            return "the outer points coincide with the median";
        }
        return null;
    }

    private QuantitySummary.Capability capability() {
        double shared = 1 - (1 - methods.confidence()) / 3;
        return new CapabilityReport(judge, point(OUTER, shared), point(0.5, shared), point(1 - OUTER, shared))
                .summarise();
    }

    private CapabilityReport.Bounded point(double p, double confidence) {
        return new CapabilityReport.Bounded(order.quantile(p), pointBounds(p, confidence));
    }

    private List<QuantitySummary.Step> ecdf() {
        List<QuantitySummary.Step> steps = new ArrayList<>();
        for (OrderStatistics.CumulativeShare share : order.cumulativeShare(ECDF_STEPS)) {
            steps.add(new QuantitySummary.Step(share.value(), share.share()));
        }
        return steps;
    }

    /** An interval widened where needed to hold its estimate. */
    private static Estimate bounded(double value, Interval interval) {
        return estimate(value, new Interval(Math.min(value, interval.low()), Math.max(value, interval.high())));
    }

    static Estimate estimate(double value, Interval interval) {
        return new Estimate(finite(value), finite(interval.low()), finite(interval.high()));
    }

    static @Nullable Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }
}
