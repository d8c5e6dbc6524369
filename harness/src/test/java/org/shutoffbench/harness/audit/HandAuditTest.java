package org.shutoffbench.harness.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.scenario.AuditRecipe;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.statistics.BinomialInterval;
import org.shutoffbench.harness.statistics.Interval;

/**
 * The audit on joints of the demo's families, each left as the test says rather than as a strategy would leave it, so that
 * every failure mode occurs often. Bounds follow from the exact intervals; no outside source exists for such a model.
 */
class HandAuditTest {

    private static final int JOINTS = 1500;
    private static final double CONFIDENCE = 0.999;

    private static Population population;
    private static AuditRecipe recipe;

    @BeforeAll
    static void theDemoWithAnAudit() {
        Scenario demo = new ScenarioFile(new StrategyCatalogue())
                .read(Path.of("..", "docs", "examples", "visits", "not-yet.yaml"));
        population = new Population(demo);
        recipe = demo.audit();
    }

    /** The joint with so much clamping torque, as a tool would leave it. */
    private static TighteningRecord left(DrawnCase drawn, double clampingTorqueNm) {
        double forceN = clampingTorqueNm / drawn.law().torqueTension().kappaOnM();
        double pastSnugRad = drawn.law().clamp().angleForForceRad(forceN);
        double angleRad = drawn.law().clamp().snugAngleRad() + (forceN == 0 ? -1 : pastSnugRad);
        Outcome outcome = clampingTorqueNm < 8.4
                        || pastSnugRad < drawn.law().clamp().seatingWidthRad()
                ? Outcome.UNSEATED
                : clampingTorqueNm < 71.4 ? Outcome.LOW : clampingTorqueNm > 96.6 ? Outcome.HIGH : Outcome.IN_WINDOW;
        return new TighteningRecord(
                drawn.family(),
                drawn.joint(),
                drawn.lot(),
                drawn.piece(),
                drawn.repeat(),
                drawn.tool(),
                0,
                EndReason.SHUTOFF,
                Verdict.REACHED,
                outcome,
                forceN,
                clampingTorqueNm,
                drawn.law().freeTorque().torqueNm(angleRad),
                Math.toDegrees(angleRad - drawn.law().clamp().snugAngleRad()),
                10,
                0.3,
                0,
                0);
    }

    private static AuditTally audited(int family, double lowestNm, double highestNm) {
        AuditCount count = new AuditCount(population, recipe, 1);
        for (int joint = 0; joint < JOINTS; joint++) {
            double torqueNm = lowestNm + (highestNm - lowestNm) * joint / (JOINTS - 1.0);
            count.add(left(population.draw(family, joint), torqueNm));
        }
        return count.tally(family, 0);
    }

    private static int family(String name) {
        return population.scenario().familyIndex(name);
    }

    private static Interval detection(AuditTally tally, FailureMode mode) {
        assertThat(tally.rejectedIn(mode).n()).as(mode.title()).isGreaterThan(30);
        return tally.rejectedIn(mode).interval(CONFIDENCE);
    }

    @Test
    void anUnseatedJointIsFoundButForTheOnesThatNobodyLookedAt() {
        Interval found = detection(audited(family("lock nut"), 0, 8), FailureMode.UNSEATED);
        assertThat(found.low()).isGreaterThan(0.97);
        assertThat(found.holds(1 - recipe.skipped().si())).isTrue();
    }

    @Test
    void lowTorqueOnPlainNutsIsFoundLessOftenTheNearerTheLimit() {
        double near = detection(audited(family("hard plain"), 66, 71), FailureMode.LOW_TORQUE)
                .high();
        double far = detection(audited(family("hard plain"), 30, 50), FailureMode.LOW_TORQUE)
                .low();
        assertThat(near).isLessThan(far);
        assertThat(far).isGreaterThan(0.95);
    }

    /** What fools a torque threshold fools the auditor: the insert and the dirt stand in the reading. */
    @Test
    void aFouledThreadHidesLowTorqueFromTheAuditor() {
        double fouled = detection(audited(family("fouled lock nut"), 50, 70), FailureMode.FOULED_THREAD)
                .high();
        double plain = detection(audited(family("hard plain"), 50, 70), FailureMode.LOW_TORQUE)
                .low();
        assertThat(fouled).isLessThan(plain);
        assertThat(fouled).isLessThan(0.25);
    }

    @Test
    void aTorqueAuditDoesNotSeeLowClampForceAtCorrectTorque() {
        AuditTally tally = audited(family("soft plain"), 75, 96);
        Interval highFriction = detection(tally, FailureMode.HIGH_FRICTION);
        Interval sound = tally.rejectedIn(FailureMode.NONE).interval(CONFIDENCE);
        assertThat(highFriction.low()).isLessThan(sound.high());
        assertThat(highFriction.high()).as("no more than false rejections").isLessThan(0.25);
    }

    @Test
    void limitsAreTheWindowUnlessTheScenarioGivesOthersAndAllowForAFamily() {
        HandAudit audit = new HandAudit(population, recipe);
        assertThat(audit.lowestNm(family("hard plain"))).isCloseTo(84 * 0.85, within(1e-9));
        assertThat(audit.highestNm(family("hard plain"))).isInfinite();
    }

    @Test
    void theSameJointMeetsTheSameAuditorWhateverTheStrategyAndTheOrder() {
        HandAudit audit = new HandAudit(population, recipe);
        TighteningRecord row = left(population.draw(0, 77), 80);
        AuditResult first = audit.audit(row);
        audit.audit(left(population.draw(2, 3), 40));
        assertThat(audit.audit(row)).isEqualTo(first);
    }

    @Test
    void skippedJointsAreAsManyAsTheScenarioSays() {
        HandAudit audit = new HandAudit(population, recipe);
        long skipped = 0;
        int n = 20_000;
        for (int joint = 0; joint < n; joint++) {
            if (audit.audit(left(population.draw(0, joint), 80)).decision() == AuditResult.Decision.SKIPPED) {
                skipped++;
            }
        }
        assertThat(BinomialInterval.CLOPPER_PEARSON
                        .of(skipped, n, CONFIDENCE)
                        .holds(recipe.skipped().si()))
                .as(skipped + " of " + n)
                .isTrue();
    }
}
