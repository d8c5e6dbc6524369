package org.shutoffbench.harness.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;

class StudySummaryTest {

    private final StudySummary summary = InventedStudy.summary(400);

    @Test
    void tighteningsThatThePlantSteppedOverAreCounted() {
        assertThat(summary.cell(0, InventedStudy.STEADY).guarded()).isEqualTo(100);
        assertThat(summary.guarded()).isEqualTo(100L * summary.cells().size());
    }

    @Test
    void ratesAddUp() {
        for (CellSummary cell : summary.cells()) {
            Rates rates = rates(cell);
            assertThat(cell.counts().stream()
                            .mapToLong(CellSummary.Count::joints)
                            .sum())
                    .isEqualTo(400);
            assertThat(rates.inWindow().count()
                            + rates.unseated().count()
                            + rates.low().count()
                            + rates.high().count()
                            + rates.yielded().count()
                            + rates.fractured().count())
                    .isEqualTo(400);
            assertThat(rates.silentMiss().count())
                    .isEqualTo(rates.unseated().count() + rates.low().count());
        }
    }

    @Test
    void blowCountMissesLockNutsSilently() {
        Rates rates = rates(summary.cell(InventedStudy.LOCK_NUT, InventedStudy.BLOWS));
        assertThat(rates.inWindow().count()).isZero();
        assertThat(rates.silentMiss().estimate()).isEqualTo(1);
        // Clopper-Pearson of 400/400: 0.025^(1/400).
        assertThat(rates.silentMiss().low()).isCloseTo(Math.pow(0.025, 1.0 / 400), within(1e-12));
    }

    @Test
    void theHeadlineNamesTheBestAndTheWorstSilentMiss() {
        Headline headline = summary.headline();
        assertThat(headline.leaders().get(0)).isEqualTo(InventedStudy.STEADIER);
        Headline.SilentMiss miss = headline.silentMiss();
        assertThat(miss).isNotNull();
        assertThat(miss.strategy()).isEqualTo(InventedStudy.BLOWS);
        assertThat(miss.family()).isEqualTo(InventedStudy.LOCK_NUT);
        Ranking.Standing last = summary.ranking().standings().get(2);
        assertThat(last.strategy()).isEqualTo(InventedStudy.BLOWS);
        assertThat(last.bestRank()).isEqualTo(3);
    }

    @Test
    void theWorstJointsAreThoseFarthestFromTheTarget() {
        List<WorstJoint> worst =
                summary.cell(InventedStudy.LOCK_NUT, InventedStudy.BLOWS).worst();
        assertThat(worst).hasSize(100);
        assertThat(worst.get(0).deviation()).isEqualTo(-1);
        for (int i = 1; i < worst.size(); i++) {
            assertThat(Math.abs(worst.get(i).deviation()))
                    .isLessThanOrEqualTo(Math.abs(worst.get(i - 1).deviation()));
        }
    }

    @Test
    void commonScatterShowsAsCorrelation() {
        PairedComparison pair = summary.comparisons().stream()
                .filter(c ->
                        c.family() == 0 && c.first() == InventedStudy.STEADY && c.second() == InventedStudy.STEADIER)
                .findFirst()
                .orElseThrow();
        assertThat(pair.n()).isEqualTo(400);
        assertThat(pair.clampingTorque().correlation().value()).isBetween(0.4, 0.6);
        assertThat(pair.inWindow().onlyFirst() + pair.inWindow().both())
                .isEqualTo(
                        rates(summary.cell(0, InventedStudy.STEADY)).inWindow().count());
    }

    @Test
    void silentMissesAreCountedByPrevailingTorque() {
        CovariateCurve curve = summary.covariateCurves().get(0);
        assertThat(curve.family()).isEqualTo(InventedStudy.LOCK_NUT);
        assertThat(curve.bins()).hasSize(2);
        long joints = curve.bins().stream()
                .mapToLong(
                        bin -> bin.silentMiss() == null ? 0 : bin.silentMiss().n())
                .sum();
        assertThat(joints).isEqualTo(400);
    }

    @Test
    void thirtyJointsRankNothing() {
        assertThat(InventedStudy.summary(30).headline().finding()).isEqualTo(Headline.Finding.TOO_FEW);
    }

    @Test
    void aCellThatCannotRunSaysWhy() {
        StudyPlan plan = InventedStudy.plan(60, 60);
        StudyPlan without = new StudyPlan(
                plan.scenario(),
                plan.judge(),
                plan.families(),
                plan.strategies(),
                List.of(new StudyPlan.NotRun(0, 1, "needs a torque channel")),
                plan.hardAndSoft(),
                plan.methods());
        StudyAccumulator study = new StudyAccumulator(without);
        for (int joint = 0; joint < 60; joint++) {
            List<TighteningRecord> all = InventedStudy.joint(without, 0, joint);
            study.addJoint(List.of(all.get(0), all.get(2)));
        }
        StudySummary partial = study.summarise(new StoppingReport("fixed", "stopped by the user", 1, false));
        assertThat(partial.cell(0, 1).reason()).isEqualTo("needs a torque channel");
        assertThat(partial.cell(1, 0).reason()).isEqualTo("stopped by the user");
        assertThat(partial.cell(0, 0).reason()).isNull();
        assertThat(partial.headline().finding()).isEqualTo(Headline.Finding.NOTHING_RAN);
    }

    @Test
    void noCapabilityBelow2731Joints() {
        QuantitySummary torque = summary.cell(0, InventedStudy.STEADY).clampingTorque();
        assertThat(torque).isNotNull();
        assertThat(torque.capability()).isNull();
        assertThat(torque.capabilityWithheld()).contains("2731");
        assertThat(torque.points().get(0).value().low()).isNull();
    }

    @Test
    void withEnoughJointsTheOuterPointsCloseAndCapabilityIsPrinted() {
        QuantitySummary torque =
                InventedStudy.summary(6000).cell(0, InventedStudy.STEADY).clampingTorque();
        assertThat(torque).isNotNull();
        QuantitySummary.Capability capability = torque.capability();
        assertThat(capability).isNotNull();
        // Window 25.2 over 6 x 4 for this normal population.
        assertThat(capability.spread().value()).isBetween(0.95, 1.15);
        assertThat(capability.spread().low()).isLessThan(capability.spread().value());
        assertThat(capability.worstSide().high())
                .isGreaterThanOrEqualTo(capability.worstSide().value());
    }

    @Test
    void fewLotsWidenTheIntervals() {
        int joints = 400;
        StudyPlan plan = InventedStudy.plan(joints, 8);
        StudyAccumulator study = new StudyAccumulator(plan);
        for (int joint = 0; joint < joints; joint++) {
            int lot = joint % 8;
            double torque = 84 + 1.5 * (lot - 3.5) + InventedStudy.prevailingTorqueNm(joint) - 9;
            study.addJoint(List.of(InventedStudy.tightening(0, joint, lot, 0, torque)));
        }
        CellSummary cell = study.summarise(InventedStudy.FINISHED).cell(0, 0);
        assertThat(rates(cell).inWindow().kind()).isEqualTo("by lot");
        QuantitySummary torque = cell.clampingTorque();
        assertThat(torque).isNotNull();
        QuantitySummary.Variance variance = torque.variance();
        assertThat(variance).isNotNull();
        // Lots at -3.5 to 3.5 steps of 1.5 N m: variance 6 x 2.25 = 13.5.
        assertThat(variance.lot()).isCloseTo(13.5, within(2.0));
        assertThat(torque.capabilityWithheld()).isNotNull();
        assertThat(torque.mean().high() - torque.mean().low()).isGreaterThan(5);
    }

    @Test
    void anEndReasonIsAColumnOfItsOwn() {
        StudyPlan plan = InventedStudy.plan(60, 60);
        StudyAccumulator study = new StudyAccumulator(plan);
        TighteningRecord endless = new TighteningRecord(
                0,
                0,
                0,
                0,
                0,
                0,
                0,
                EndReason.TIME_LIMIT,
                Verdict.NOT_REACHED,
                Outcome.LOW,
                1000,
                20,
                0.2,
                1,
                400,
                10,
                0,
                0);
        study.addJoint(List.of(endless));
        CellSummary cell = study.summarise(InventedStudy.FINISHED).cell(0, 0);
        assertThat(cell.counts())
                .containsExactly(new CellSummary.Count(Outcome.LOW, Verdict.NOT_REACHED, EndReason.TIME_LIMIT, 1));
    }

    private static Rates rates(CellSummary cell) {
        Rates rates = cell.rates();
        assertThat(rates).isNotNull();
        return rates;
    }
}
