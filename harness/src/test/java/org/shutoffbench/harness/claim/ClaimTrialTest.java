package org.shutoffbench.harness.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.statistics.RiskPoint;
import org.shutoffbench.harness.statistics.VariablesPlan;

/** Trials on populations whose law is known. Values are made from fixed seeds. */
class ClaimTrialTest {

    private static final int BANK = 50_000;
    private static final int TRIALS = 10_000;

    private static Claim claim(double coverage, double good, FailureRule rule) {
        return ClaimFile.parse(
                "claim.yaml",
                ClaimFileTest.WHOLE
                        .replace("coverage: 99 %", "coverage: " + 100 * coverage + " %")
                        .replace("failing: 0.2 %", "failing: " + 100 * good + " %")
                        .replace("lots: 10", "lots: any")
                        .replace("outside the tolerance", rule.title()));
    }

    private static ClaimTrial trial(Claim claim, double[] values) {
        List<int[]> lots = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            lots.add(new int[] {i});
        }
        boolean[] done = new boolean[values.length];
        java.util.Arrays.fill(done, true);
        SimulatedJoints joints = SimulatedJoints.of(
                List.of(0), lots, new int[values.length], new double[][] {values}, new boolean[][] {done});
        return ClaimTrial.of(ClaimPlan.of(claim), joints, 0, "invented", List.of("one"), TRIALS, 5);
    }

    private static double[] normal(double mean, double sd, int n, long seed) {
        Random random = new Random(seed);
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = mean + sd * random.nextGaussian();
        }
        return values;
    }

    @Test
    void onNormalValuesRealisedRisksAreTheNominalOnes() {
        // one limit, 71.4; the mean stands so that 0.6 % lie below it: between seller's and buyer's share
        Claim claim = claim(0.99, 0.002, FailureRule.BELOW);
        ClaimTrial trial = trial(claim, normal(71.4 + 2.5121 * 3, 3, BANK, 11));
        assertThat(trial.counting().interval(0.999).holds(trial.counting().nominal()))
                .isTrue();
        assertThat(trial.measuring()).isNotNull();
        // the law's own mean and spread: the bank's share beyond the limit is an estimate of 0.6 %
        ClaimPlan plan = ClaimPlan.of(claim);
        assertThat(plan.variables()).isNotNull();
        double nominal = plan.variables().acceptance(0.006);
        assertThat(trial.measuring().realised()).isBetween(nominal - 0.03, nominal + 0.03);
        assertThat(trial.fooled()).isFalse();
    }

    @Test
    void aMixtureWithRareMissesFoolsThePlanByVariablesAndThePageSaysSo() {
        Claim claim = claim(0.999, 0.00001, FailureRule.OUTSIDE);
        double[] values = normal(84, 1.5, BANK, 12);
        for (int i = 0; i < BANK; i += 250) {
            values[i] = 0;
        }
        ClaimTrial trial = trial(claim, values);
        assertThat(trial.failing()).isEqualTo(200);
        assertThat(trial.measuring()).isNotNull();
        VariablesPlan plan = ClaimPlan.of(claim).variables();
        assertThat(plan).isNotNull();
        // a sample that holds none of the lost joints is accepted: (1 - 0.004)^n at least
        assertThat(trial.measuring().interval(0.999).high()).isGreaterThan(Math.pow(0.996, plan.n()));
        assertThat(trial.fooled()).isTrue();
        assertThat(trial.answer()).isEqualTo(ClaimTrial.Answer.REFUTED);
        assertThat(TrialPage.of(List.of(trial), List.of(ClaimPlan.of(claim)), List.of(List.of()))
                        .text())
                .contains("The plan by variables fails here");
        assertThat(trial.counting().realised()).isLessThan(0.05);
    }

    @Test
    void answersFollowTheBounds() {
        Claim claim = claim(0.99, 0.002, FailureRule.OUTSIDE);
        assertThat(trial(claim, normal(84, 2, 5000, 1)).answer()).isEqualTo(ClaimTrial.Answer.SUPPORTED);
        assertThat(trial(claim, normal(84, 9, 5000, 2)).answer()).isEqualTo(ClaimTrial.Answer.REFUTED);
        ClaimTrial few = trial(claim, normal(84, 2, 100, 3));
        assertThat(few.answer()).isEqualTo(ClaimTrial.Answer.UNDECIDED);
        assertThat(few.more()).isEqualTo(199);
    }

    @Test
    void theBuyersPointOfTheClaimIsHeldByEveryPlan() {
        Claim claim = claim(0.99, 0.002, FailureRule.OUTSIDE);
        ClaimPlan plan = ClaimPlan.of(claim);
        RiskPoint buyer = claim.buyer();
        assertThat(plan.zeroFailure().acceptance(buyer.failing())).isLessThanOrEqualTo(buyer.risk());
        assertThat(plan.attributes()).isNotNull();
        assertThat(plan.attributes().acceptance(buyer.failing())).isLessThanOrEqualTo(buyer.risk());
        assertThat(plan.variables()).isNotNull();
        assertThat(plan.variables().easiest(buyer.failing())).isLessThanOrEqualTo(buyer.risk() + 1e-9);
    }
}
