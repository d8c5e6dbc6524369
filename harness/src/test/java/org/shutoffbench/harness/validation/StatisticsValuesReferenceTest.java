package org.shutoffbench.harness.validation;

import java.util.List;
import org.shutoffbench.harness.statistics.BinomialInterval;
import org.shutoffbench.harness.statistics.CapabilityIndex;
import org.shutoffbench.harness.statistics.FreeTolerance;
import org.shutoffbench.harness.statistics.NormalIntervals;
import org.shutoffbench.harness.statistics.ToleranceFactor;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ReferenceFile;
import org.shutoffbench.validation.ReferenceRow;
import org.shutoffbench.validation.ReferenceSource;

/** The published values of statistics that the validation page shows. */
public class StatisticsValuesReferenceTest implements ReferenceSource {

    @Override
    public List<Check> checks() {
        return ReferenceFile.read("statistics/published.csv").checks(StatisticsValuesReferenceTest::ours);
    }

    private static double ours(ReferenceRow row) {
        double a = row.number("a");
        double b = row.number("b");
        double c = row.number("c");
        return switch (row.text("figure")) {
            case "howe" -> ToleranceFactor.HOWE.twoSided((long) a, b, c);
            case "exact" -> ToleranceFactor.EXACT.twoSided((long) a, b, c);
            case "wilks" -> FreeTolerance.leastSample((int) a, b, c);
            case "success run" -> FreeTolerance.successRun(a, b);
            case "exact low" ->
                BinomialInterval.CLOPPER_PEARSON.of((long) a, (long) b, c).low();
            case "exact high" ->
                BinomialInterval.CLOPPER_PEARSON.of((long) a, (long) b, c).high();
            case "wilson low" ->
                BinomialInterval.WILSON.of((long) a, (long) b, c).low();
            case "wilson high" ->
                BinomialInterval.WILSON.of((long) a, (long) b, c).high();
            case "sigma low" -> NormalIntervals.sigma(a, (long) b, c).low();
            case "sigma high" -> NormalIntervals.sigma(a, (long) b, c).high();
            case "capability" -> CapabilityIndex.bissellLowerBound(a, (long) b, c);
            default -> throw new IllegalArgumentException(row.text("figure"));
        };
    }
}
