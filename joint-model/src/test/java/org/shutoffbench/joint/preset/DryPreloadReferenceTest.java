package org.shutoffbench.joint.preset;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.moment.Mean;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ReferenceFile;
import org.shutoffbench.validation.ReferenceRow;
import org.shutoffbench.validation.ReferenceSource;

/** Blake and Kurtz tightened 20 dry bolts to one torque; the dry steel preset under a perfect torque stop does likewise. */
public class DryPreloadReferenceTest implements ReferenceSource {

    /** Shigley, tables 8-13, from Blake and Kurtz; kN. */
    private static final double[] PUBLISHED_KN = {
        23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9, 33.8, 33.8, 33.8, 34.7, 35.6, 35.6, 37.4, 37.8, 37.8, 39.2, 40.0,
        40.5, 42.7
    };

    private static final double TORQUE_NM = 90;
    private static final int JOINTS = 20_000;

    private static final double[] OURS_KN = drawn();

    private static double[] drawn() {
        ScrewThread thread = ThreadDesignation.parse("M12x1.25");
        double bearing = MetricSize.M12.hexagon().meanBearingDiameterM();
        PreloadSample sample = new PreloadSample(1, SurfacePreset.DRY_STEEL.friction());
        return IntStream.range(0, JOINTS)
                .mapToDouble(joint -> sample.forceN(joint, thread, bearing, TORQUE_NM) / 1e3)
                .toArray();
    }

    @Override
    public List<Check> checks() {
        return ReferenceFile.read("scatter/dry-preload.csv").checks(this::ours);
    }

    private double ours(ReferenceRow row) {
        return row.text("quantity").equals("mean") ? mean(OURS_KN) : deviation(OURS_KN) / mean(OURS_KN);
    }

    @Test
    void theListHasTheMomentsPrintedWithIt() {
        assertThat(Math.round(mean(PUBLISHED_KN) * 10) / 10.0).isEqualTo(34.3);
        assertThat(Math.round(deviation(PUBLISHED_KN) * 100) / 100.0).isEqualTo(4.91);
    }

    /** Student's and chi-squared intervals, as for a normal sample of 20. */
    @Test
    void meanAndVariationLieInsideThe95PercentIntervalsOfTheData() {
        int n = PUBLISHED_KN.length;
        double mean = mean(PUBLISHED_KN);
        double deviation = deviation(PUBLISHED_KN);
        double half = TDistribution.of(n - 1).inverseCumulativeProbability(0.975) * deviation / Math.sqrt(n);
        ChiSquaredDistribution chi = ChiSquaredDistribution.of(n - 1);
        double cv = deviation / mean;
        double lowCv = cv * Math.sqrt((n - 1) / chi.inverseCumulativeProbability(0.975));
        double highCv = cv * Math.sqrt((n - 1) / chi.inverseCumulativeProbability(0.025));
        assertThat(mean(OURS_KN)).isBetween(mean - half, mean + half);
        assertThat(deviation(OURS_KN) / mean(OURS_KN)).isBetween(lowCv, highCv);
    }

    /** 20 of our joints at a time: the published extremes are no rare ones. */
    @Test
    void theExtremesOfTheListAreCommonAmongOurSamplesOfTwenty() {
        long lower = IntStream.range(0, JOINTS / 20)
                .filter(i -> twenty(i).min().orElseThrow() < 23.6)
                .count();
        long higher = IntStream.range(0, JOINTS / 20)
                .filter(i -> twenty(i).max().orElseThrow() > 42.7)
                .count();
        assertThat(lower / (JOINTS / 20.0)).isBetween(0.025, 0.975);
        assertThat(higher / (JOINTS / 20.0)).isBetween(0.025, 0.975);
    }

    private static DoubleStream twenty(int sample) {
        return java.util.Arrays.stream(OURS_KN, 20 * sample, 20 * sample + 20);
    }

    private static double mean(double[] values) {
        return new Mean().evaluate(values);
    }

    private static double deviation(double[] values) {
        return new StandardDeviation().evaluate(values);
    }
}
