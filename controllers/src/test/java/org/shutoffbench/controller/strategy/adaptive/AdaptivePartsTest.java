package org.shutoffbench.controller.strategy.adaptive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/** The small parts of the estimator, one claim each. */
class AdaptivePartsTest {

    private static final float NOISE = 2.4e-3f;

    @Test
    void aQuietArmLeavesTheBelievedNoiseAlone() {
        SwayGauge gauge = new SwayGauge(NOISE);
        gauge.reset();
        assertThat(gauge.stepVariance()).isCloseTo(NOISE * NOISE, Percentage.withPercentage(0.01));
        for (int i = 0; i < 50; i++) {
            gauge.hear(i % 2 == 0 ? 2 * NOISE : -2 * NOISE); // a drift's variance is four times that of a step
        }
        assertThat(gauge.stepVariance()).isCloseTo(NOISE * NOISE, Percentage.withPercentage(0.01));
    }

    @Test
    void aRestlessArmWidensEveryStep() {
        SwayGauge gauge = new SwayGauge(NOISE);
        gauge.reset();
        for (int i = 0; i < 2000; i++) {
            gauge.hear(i % 2 == 0 ? 4 * NOISE : -4 * NOISE);
        }
        // four times the diffusion: the averages widen by its root, the gap in full
        assertThat(gauge.stepVariance() / (NOISE * NOISE)).isCloseTo(0.7f * 2 + 0.3f * 4, within(0.05f));
    }

    @Test
    void oneJerkOfTheArmCountsForLittle() {
        SwayGauge gauge = new SwayGauge(NOISE);
        gauge.reset();
        gauge.hear(1);
        assertThat(gauge.stepVariance()).isLessThan(2 * NOISE * NOISE);
    }

    @Test
    void aFullHistoryJoinsOldStretchesAndLosesNothing() {
        BlowHistory history = new BlowHistory();
        history.reset();
        float angle = 0;
        float energy = 0;
        for (int i = 0; i < 3 * BlowHistory.CAPACITY; i++) {
            float advance = 0.01f + 0.001f * (i % 5);
            history.add(advance, 1 + i, 1, 0.01f, 1e-6f);
            angle += advance;
            energy += 1 + i;
        }
        float sum = 0;
        float blows = 0;
        for (int i = 0; i < history.size; i++) {
            sum += history.energyJ[i];
            blows += history.blows[i];
            assertThat(history.lengthRad(i)).isPositive();
        }
        assertThat(history.size).isLessThanOrEqualTo(BlowHistory.CAPACITY);
        assertThat(history.endRad()).isCloseTo(angle, within(1e-4f));
        assertThat(sum).isCloseTo(energy, Percentage.withPercentage(0.01));
        assertThat(blows).isEqualTo(3 * BlowHistory.CAPACITY);
        assertThat(history.energyVariance[0]).isLessThan(0.01f);
        assertThat(history.energyVariance[history.size - 1]).isEqualTo(0.01f);
    }

    @Test
    void aSmallSystemIsSolvedAndItsInverseKnown() {
        NormalEquations system = new NormalEquations(2);
        system.clear();
        system.add(new float[] {1, 0}, -3, 1);
        system.add(new float[] {1, 1}, -5, 1);
        system.factor(0);
        float[] x = new float[2];
        system.solve(system.right, x);
        assertThat(x).containsExactly(new float[] {3, 2}, within(1e-5f));
        // (A'A)^-1 = [[1, -1], [-1, 2]]
        assertThat(system.variance(new float[] {0, 1})).isCloseTo(2, within(1e-5f));
        assertThat(system.variance(new float[] {1, 1})).isCloseTo(1, within(1e-5f));
    }

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1. */
    @Test
    void normalTailsAreThoseOfTheTable() {
        assertThat(NormalTail.above(0)).isCloseTo(0.5f, within(2e-6f));
        assertThat(NormalTail.above(1)).isCloseTo(0.1586553f, within(2e-6f));
        assertThat(NormalTail.above(1.96f)).isCloseTo(0.0249979f, within(2e-6f));
        assertThat(NormalTail.above(-1)).isCloseTo(0.8413447f, within(2e-6f));
    }

    @Test
    void theVerdictIsThePosteriors() {
        Settings settings = StruckJoint.settings(Map.of());
        StruckJoint joint = StruckJoint.hard().strike(8);
        joint.solve(true, true);
        float end = joint.endRad();
        float torque = joint.fit.guess.clampingNm(end);
        float deviation = joint.fit.deviationNm(end);
        assertThat(verdict(settings, joint, torque + 3 * deviation)).isEqualTo(Verdict.NOT_REACHED);
        assertThat(verdict(settings, joint, torque - deviation)).isEqualTo(Verdict.UNSURE);
        assertThat(verdict(settings, joint, torque - 3 * deviation)).isEqualTo(Verdict.REACHED);
        Settings strict = StruckJoint.settings(Map.of(AdaptiveSettings.DOUBT, 0.0));
        assertThat(verdict(strict, joint, torque - 3 * deviation)).isEqualTo(Verdict.UNSURE);
    }

    @Test
    void aRestlessArmIsDoubtedByTheCubeRootOfItsRestlessness() {
        Settings settings = StruckJoint.settings(Map.of());
        StruckJoint joint = StruckJoint.hard().strike(8);
        joint.solve(true, true);
        float end = joint.endRad();
        // one in twenty lies beyond 1.645 standard deviations, and the arm of 8 doubles them
        float lowest = joint.fit.guess.clampingNm(end) - 2 * 1.645f * joint.fit.deviationNm(end);
        assertThat(verdict(settings, joint, lowest, 7.9f)).isEqualTo(Verdict.REACHED);
        assertThat(verdict(settings, joint, lowest, 8.1f)).isEqualTo(Verdict.UNSURE);
        assertThat(verdict(settings, joint, lowest, 0.1f)).isEqualTo(Verdict.REACHED);
    }

    @Test
    void aLawThatDoesNotFitIsUnsureHoweverNarrowThePosterior() {
        StruckJoint joint = StruckJoint.hard().strike(4);
        joint.strike(1, 0.06f).strike(1, -0.06f).strike(1, 0.06f).strike(1, -0.06f);
        joint.solve(true, true);
        float torque = joint.fit.guess.clampingNm(joint.endRad());
        Settings settings = StruckJoint.settings(Map.of(AdaptiveSettings.MISFIT, 1.0));
        assertThat(joint.fit.misfit()).isGreaterThan(1);
        assertThat(verdict(settings, joint, 0.3f * torque)).isEqualTo(Verdict.UNSURE);
    }

    /** Verdict where the window begins at a torque. */
    private static Verdict verdict(Settings settings, StruckJoint joint, float lowestNm) {
        return verdict(settings, joint, lowestNm, 1);
    }

    private static Verdict verdict(Settings settings, StruckJoint joint, float lowestNm, float restlessness) {
        Certainty certainty = new Certainty(settings);
        certainty.arm(new Target(lowestNm / 0.85f, 0.15f));
        return certainty.verdict(joint.fit, joint.endRad(), restlessness);
    }

    @Test
    void theObserverFindsAStepOfTheNutAndTakesADoubledReportAsOneBlow() {
        BlowObserver observer = new BlowObserver(1e-4f);
        observer.reset();
        int complete = 0;
        int completedAt = 0;
        for (int tick = 1; tick <= 1200; tick++) {
            float angle = tick < 1000 ? 2 : 2.1f;
            int reports = tick == 1006 || tick == 1040 ? 1 : 0;
            if (observer.observe(angle, 150, reports)) {
                complete++;
                completedAt = tick;
            }
        }
        assertThat(complete).isEqualTo(1);
        assertThat(completedAt).isBetween(1030, 1045); // 3.6 ms after contact: early enough to prevent the next
        assertThat(observer.restAfterRad - observer.restBeforeRad).isCloseTo(0.1f, within(1e-3f));
        assertThat(observer.wasAtRest).isTrue();
        assertThat(observer.meanSpeedRadPerS).isCloseTo(150, within(1f));
        assertThat(observer.period).isBetween(990, 1005);
    }
}
