package org.shutoffbench.controller.strategy.adaptive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Truth is the law that made the blows; bounds are this project's own. */
class JointFitAnalyticTest {

    @Test
    void fromNoiseFreeBlowsTheLawOfAPlainJointIsRecovered() {
        StruckJoint joint = StruckJoint.hard().strike(8);
        joint.solve(true, true);
        float end = joint.endRad();
        assertThat(joint.fit.guess.clampingNm(end)).isCloseTo(joint.law.clampingNm(end), Percentage.withPercentage(1));
        assertThat(joint.fit.guess.rate).isCloseTo(joint.law.rate, Percentage.withPercentage(3));
    }

    @Test
    void prevailingTorqueIsToldFromClampingTorque() {
        StruckJoint joint = StruckJoint.locked().strike(20);
        joint.solve(false, false);
        float end = joint.endRad();
        float clamping = joint.law.clampingNm(end);
        assertThat(joint.law.freeNm(end)).isGreaterThan(0.15f * clamping);
        assertThat(joint.fit.guess.clampingNm(end)).isCloseTo(clamping, Percentage.withPercentage(3));
        assertThat(joint.fit.guess.freeNm(end)).isCloseTo(joint.law.freeNm(end), within(2.5f));
    }

    @Test
    void withOneStretchThePriorHoldsAndThePosteriorIsWide() {
        StruckJoint one = StruckJoint.hard().strike(1);
        one.solve(true, true);
        StruckJoint eight = StruckJoint.hard().strike(8);
        eight.solve(true, true);
        float believed = (float) Math.exp(one.prior.mean[JointLawGuess.LOG_RATE]);
        assertThat(Math.abs(one.fit.guess.rate - believed)).isLessThan(Math.abs(eight.fit.guess.rate - believed));
        assertThat(relativeDeviation(one)).isGreaterThan(2 * relativeDeviation(eight));
    }

    private static float relativeDeviation(StruckJoint joint) {
        float end = joint.endRad();
        return joint.fit.deviationNm(end) / joint.fit.guess.clampingNm(end);
    }

    @Test
    void aKnownJointRateNarrowsThePosterior() {
        StruckJoint vague = new StruckJoint(180, -0.25f, 0.14f, 0.3f, 0, -7).strike(3);
        StruckJoint known = new StruckJoint(
                        Map.of(AdaptiveSettings.RATE, 180.0, AdaptiveSettings.RATE_SPREAD, 0.15),
                        180,
                        -0.25f,
                        0.14f,
                        0.3f,
                        0,
                        -7)
                .strike(3);
        vague.solve(true, true);
        known.solve(true, true);
        assertThat(known.fit.deviationNm(known.endRad())).isLessThan(vague.fit.deviationNm(vague.endRad()));
        assertThat(known.fit.guess.rate).isCloseTo(180, Percentage.withPercentage(5));
    }

    @Test
    void oneWildStepHasBoundedInfluence() {
        float clean = endNm(0);
        float perRad = Math.abs(endNm(0.002f) - clean) / 0.002f;
        float wild = Math.abs(endNm(0.02f) - clean);
        float wilder = Math.abs(endNm(0.04f) - clean);
        // least squares would go on in proportion
        assertThat(wild).isLessThan(0.7f * perRad * 0.02f);
        assertThat(wilder).isLessThan(0.5f * perRad * 0.04f);
    }

    /** Estimated over true clamping torque when the fifth of eight steps is read wrong. */
    private static float endNm(float errorRad) {
        StruckJoint joint = StruckJoint.hard();
        for (int i = 0; i < 8; i++) {
            float advance = joint.advanceRad(joint.endRad(), StruckJoint.ENERGY_J);
            joint.history.add(
                    advance, StruckJoint.ENERGY_J, 1, StruckJoint.ENERGY_VARIANCE, StruckJoint.USUAL_STEP_VARIANCE);
        }
        float truth = joint.law.clampingNm(joint.endRad());
        for (int i = 5; i < joint.history.startRad.length; i++) {
            joint.history.startRad[i] += errorRad;
        }
        joint.solve(true, true);
        return joint.fit.guess.clampingNm(joint.endRad()) / truth;
    }

    @Test
    void torquePulsesPullTheEstimateTowardsWhatTheySay() {
        StruckJoint joint = StruckJoint.hard().strike(4);
        joint.solve(true, true);
        float end = joint.endRad();
        float without = joint.fit.guess.clampingNm(end);
        float deviation = joint.fit.deviationNm(end);
        joint.history.hearPulse(1.2f * joint.torqueNm(end));
        joint.solve(true, true);
        assertThat(joint.fit.guess.clampingNm(end)).isBetween(1.002f * without, 1.2f * without);
        assertThat(joint.fit.deviationNm(end)).isLessThan(deviation);
    }

    @Test
    void aPieceOfWorkSumsFewStretchesAndAFitEnds() {
        StruckJoint joint = StruckJoint.locked().strike(2 * BlowHistory.CAPACITY);
        joint.prior.believe(false, false);
        new FirstGuess(joint.tool, joint.history).make(false, joint.prior, joint.fit.guess);
        int iterations = 8;
        joint.fit.begin(iterations, 0);
        int pieces = 0;
        while (!joint.fit.finished) {
            joint.fit.work();
            pieces++;
        }
        int sweeps = (BlowHistory.CAPACITY + JointFit.STRETCHES_PER_CALL - 1) / JointFit.STRETCHES_PER_CALL;
        assertThat(pieces).isLessThanOrEqualTo(iterations * sweeps);
        // at most once a sample: the solve is over before a next blow at 18 ms and 10 kHz
        assertThat(pieces).isLessThan(180);
    }

    @Test
    void aWorseLawFitsWorse() {
        StruckJoint joint = StruckJoint.hard().strike(4);
        joint.strike(1, 0.03f).strike(1, -0.03f).strike(1, 0.03f).strike(1, -0.03f);
        joint.solve(true, true);
        StruckJoint good = StruckJoint.hard().strike(8);
        good.solve(true, true);
        assertThat(joint.fit.misfit()).isGreaterThan(5 * good.fit.misfit());
    }
}
