package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;

/** A small study with invented numbers: three strategies, a plain family and one whose lock nuts fool the first. */
public final class InventedStudy {

    static final Judge JUDGE = new Judge(Quantity.CLAMPING_TORQUE, 84, 71.4, 96.6);
    static final int PLAIN = 0;
    static final int LOCK_NUT = 1;
    static final int BLOWS = 0;
    static final int STEADY = 1;
    static final int STEADIER = 2;

    private InventedStudy() {}

    static StudyPlan plan(int joints, int lots) {
        Covariate prevailing = new Covariate("prevailing torque", "N*m", List.of(4.0, 9.0, 14.0));
        return new StudyPlan(
                "invented",
                JUDGE,
                List.of(
                        new Family("hard plain", "", joints, lots, joints, 1, null),
                        new Family("lock nut", "4 to 14 N*m", joints, lots, joints, 1, prevailing)),
                List.of(
                        new Strategy("blow count", Strategy.SettingsKind.HOME, List.of("blow detection")),
                        new Strategy("adaptive estimation", Strategy.SettingsKind.ALL, List.of("anvil angle")),
                        new Strategy("energy per blow", Strategy.SettingsKind.ALL, List.of("anvil angle"))),
                List.of(),
                new StudyPlan.TorqueRateFamilies(PLAIN, LOCK_NUT),
                Methods.DEFAULT);
    }

    static double prevailingTorqueNm(int joint) {
        return 4 + new SplittableRandom(joint).nextDouble() * 10;
    }

    /** What the three strategies made of a joint. */
    static List<TighteningRecord> joint(StudyPlan plan, int family, int joint) {
        SplittableRandom random = new SplittableRandom(31L * joint + family);
        double common = random.nextGaussian();
        List<TighteningRecord> tightenings = new ArrayList<>();
        for (int strategy = 0; strategy < plan.strategies().size(); strategy++) {
            double torque = 84 + (strategy == STEADIER ? 2 : 4) * (common + random.nextGaussian()) / Math.sqrt(2);
            if (family == LOCK_NUT && strategy == BLOWS) {
                torque = Math.max(0, 60 - 10 * prevailingTorqueNm(joint) + 5 * random.nextGaussian());
            }
            int lot = joint % plan.families().get(family).lots();
            tightenings.add(tightening(family, joint, lot, strategy, torque));
        }
        return tightenings;
    }

    static TighteningRecord tightening(int family, int joint, int lot, int strategy, double torqueNm) {
        Outcome outcome = torqueNm < 8.4
                ? Outcome.UNSEATED
                : torqueNm < JUDGE.lowest()
                        ? Outcome.LOW
                        : torqueNm > JUDGE.highest() ? Outcome.HIGH : Outcome.IN_WINDOW;
        return new TighteningRecord(
                family,
                joint,
                lot,
                joint,
                0,
                joint,
                strategy,
                EndReason.SHUTOFF,
                Verdict.REACHED,
                outcome,
                torqueNm / 1.6e-3,
                torqueNm,
                0.2,
                torqueNm / 2,
                7,
                0.5,
                1.5,
                joint % 4 == 3 ? 2 : 0);
    }

    static StudyAccumulator accumulated(StudyPlan plan, int from, int to) {
        StudyAccumulator study = new StudyAccumulator(plan);
        for (int family = 0; family < plan.families().size(); family++) {
            for (int joint = from; joint < to; joint++) {
                study.addJoint(joint(plan, family, joint), prevailingTorqueNm(joint));
            }
        }
        return study;
    }

    public static StudySummary summary(int joints) {
        return accumulated(plan(joints, joints), 0, joints).summarise(FINISHED);
    }

    static final StoppingReport FINISHED =
            new StoppingReport("fixed number of joints", "all planned joints ran", 1, true);
}
