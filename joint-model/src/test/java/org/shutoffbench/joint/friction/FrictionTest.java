package org.shutoffbench.joint.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class FrictionTest {

    /** VDI 2230 table A5, from memory. */
    @ParameterizedTest
    @CsvSource({"A, 0.04, 0.10", "B, 0.08, 0.16", "C, 0.14, 0.24", "D, 0.20, 0.35"})
    void classesHaveTheirRanges(FrictionClass frictionClass, double lowest, double highest) {
        assertThat(frictionClass.lowest()).isEqualTo(lowest);
        assertThat(frictionClass.highest()).isEqualTo(highest);
    }

    /** The limits lie two sigma to either side. */
    @ParameterizedTest
    @EnumSource(FrictionClass.class)
    void aClassScattersOverItsRange(FrictionClass frictionClass) {
        FrictionScatter scatter = frictionClass.scatter();
        double sigma = scatter.thread().totalSigma();
        double median = scatter.thread().median();
        assertThat(median * Math.exp(2 * sigma)).isCloseTo(frictionClass.highest(), within(1e-12));
        assertThat(median * Math.exp(-2 * sigma)).isCloseTo(frictionClass.lowest(), within(1e-12));
        double lotVariance = Math.pow(Scatter.sigma(scatter.thread().lotCv()), 2);
        assertThat(lotVariance / (sigma * sigma)).isCloseTo(2.0 / 3, within(1e-12));
        assertThat(scatter.bearingMedian()).isCloseTo(median, within(1e-15));
        assertThat(scatter.logCorrelation()).isBetween(0.75, 1.0);
    }

    @Test
    void levelsOfScatterMultiply() {
        Scatter scatter = new Scatter(0.13, 0.08, 0.06, 0.03);
        double product = (1 + 0.08 * 0.08) * (1 + 0.06 * 0.06) * (1 + 0.03 * 0.03);
        assertThat(scatter.totalCv()).isCloseTo(Math.sqrt(product - 1), within(1e-12));
        assertThat(scatter.mean()).isCloseTo(0.13 * Math.sqrt(product), within(1e-12));
        assertThat(scatter.about(0.2)).isEqualTo(new Scatter(0.2, 0.08, 0.06, 0.03));
        assertThat(Scatter.cv(Scatter.sigma(0.37))).isCloseTo(0.37, within(1e-12));
        assertThat(Scatter.none(0.12).totalCv()).isZero();
        assertThat(Scatter.none(0.12).mean()).isEqualTo(0.12);
    }

    @Test
    void theRatioLoosensTheTieBetweenThreadAndFace() {
        Scatter thread = new Scatter(0.13, 0.08, 0.06, 0);
        FrictionScatter tied = new FrictionScatter(thread, Scatter.none(1.1), Retightening.NONE);
        assertThat(tied.logCorrelation()).isCloseTo(1, within(1e-12));
        assertThat(tied.bearingMedian()).isCloseTo(0.143, within(1e-12));
        assertThat(tied.bearingCv()).isCloseTo(thread.totalCv(), within(1e-12));
        double sigma = thread.totalSigma();
        FrictionScatter even = new FrictionScatter(thread, new Scatter(1, 0, Scatter.cv(sigma), 0), Retightening.NONE);
        assertThat(even.logCorrelation()).isCloseTo(Math.sqrt(0.5), within(1e-12));
        assertThat(even.bearingCv()).isCloseTo(Scatter.cv(sigma * Math.sqrt(2)), within(1e-12));
        FrictionScatter fixed = new FrictionScatter(Scatter.none(0.1), Scatter.none(1), Retightening.NONE);
        assertThat(fixed.logCorrelation()).isEqualTo(1);
    }

    @Test
    void retighteningChangesFrictionUpToALimit() {
        Retightening wear = new Retightening(1.1, 1.25);
        assertThat(wear.factor(0)).isEqualTo(1);
        assertThat(wear.factor(1)).isCloseTo(1.1, within(1e-12));
        assertThat(wear.factor(2)).isCloseTo(1.21, within(1e-12));
        assertThat(wear.factor(3)).isEqualTo(1.25);
        Retightening polish = new Retightening(0.9, 0.8);
        assertThat(polish.factor(1)).isCloseTo(0.9, within(1e-12));
        assertThat(polish.factor(9)).isEqualTo(0.8);
        assertThat(Retightening.NONE.factor(7)).isEqualTo(1);
        assertThatThrownBy(() -> wear.factor(-1)).hasMessageContaining("repeat");
        assertThatThrownBy(() -> new Retightening(1.1, 0.9)).hasMessageContaining("same side");
        assertThatThrownBy(() -> new Retightening(0, 1)).hasMessageContaining("positive");
        assertThatThrownBy(() -> new Retightening(1, 0)).hasMessageContaining("positive");
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Scatter(0, 0, 0, 0)).hasMessageContaining("median");
        assertThatThrownBy(() -> new Scatter(1, -0.1, 0, 0)).hasMessageContaining("coefficients of variation");
        assertThatThrownBy(() -> new Scatter(1, 0, -0.1, 0)).hasMessageContaining("coefficients of variation");
        assertThatThrownBy(() -> new Scatter(1, 0, 0, 11)).hasMessageContaining("coefficients of variation");
        assertThatThrownBy(() -> new FrictionMeasurement(0, 1)).hasMessageContaining("torque and clamp force");
        assertThatThrownBy(() -> new FrictionMeasurement(1, 0)).hasMessageContaining("torque and clamp force");
    }
}
