package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.EndReason;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.study.Covariate;
import org.shutoffbench.harness.study.Family;
import org.shutoffbench.harness.study.Judge;
import org.shutoffbench.harness.study.Methods;
import org.shutoffbench.harness.study.Quantity;
import org.shutoffbench.harness.study.StoppingReport;
import org.shutoffbench.harness.study.Strategy;
import org.shutoffbench.harness.study.StudyAccumulator;
import org.shutoffbench.harness.study.StudyPlan;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;

/**
 * A study with invented figures, for pages only: every number is made up from a fixed seed and stands for no strategy. It
 * has what real studies have: a cell that did not run, one that was cut short, twice the same strategy, all and none.
 */
final class InventedStudy {

    static final Judge JUDGE = new Judge(Quantity.CLAMPING_TORQUE, 84, 71.4, 96.6);
    private static final double KAPPA_M = 2.1e-3;
    private static final double[] STIFFNESS = {300e6, 70e6, 180e6, 180e6};
    private static final double[] SEATING_DEG = {8, 35, 14, 20};
    private static final double[][] MEAN_AND_SD = {
        // by strategy: mean and standard deviation of clamping torque on each family, N m; below 0 counts as unseated
        {84, 4.2, 84.5, 1.8, 83, 3.1, 83.5, 3.2},
        {84, 3.8, 84.5, 1.8, 83.6, 3.0, 84, 3.1},
        {89, 5.8, 90, 3.2, 91, 5.4, 92, 6},
        {87, 3, 86.5, 2.7, 78, 3.3, 72.3, 3.4},
        {145, 18, 45, 3.2, 76, 8.5, 40, 40},
        {85, 5.3, 41, 2.5, -8, 32, -40, 30},
        {118, 9, 62, 4, 20, 30, -10, 35},
    };

    private static final int ENERGY = 2;
    private static final int THRESHOLD = 3;

    final StudySummary summary;
    final Map<WorstJointsSection.Place, List<TighteningRecord>> stops = new HashMap<>();

    private final int joints;
    private final List<Family> families;
    private final List<Strategy> strategies = List.of(
            new Strategy("adaptive estimation", Strategy.SettingsKind.ALL, List.of("anvil angle", "carrier speed")),
            new Strategy("adaptive estimation", Strategy.SettingsKind.HOME, List.of("anvil angle", "carrier speed")),
            new Strategy("energy per blow", Strategy.SettingsKind.ALL, List.of("carrier speed", "blow detection")),
            new Strategy("pulse torque threshold", Strategy.SettingsKind.ALL, List.of("torque at the anvil")),
            new Strategy("angle from snug", Strategy.SettingsKind.ALL, List.of("anvil angle")),
            new Strategy("blow count", Strategy.SettingsKind.HOME, List.of("blow detection")),
            new Strategy("blow count", Strategy.SettingsKind.ALL, List.of("blow detection")));

    /** A study of that many joints per family. */
    InventedStudy(int joints) {
        this.joints = joints;
        this.families = List.of(
                family("hard plain", "300 kN/mm, no prevailing torque"),
                family("soft plain", "70 kN/mm, no prevailing torque"),
                family("lock nut", "180 kN/mm, 4\u201314 N\u00b7m prevailing"),
                family("fouled lock nut", "8\u201324 N\u00b7m prevailing"));
        StudyAccumulator accumulator = new StudyAccumulator(plan());
        for (int f = 0; f < families.size(); f++) {
            for (int joint = 0; joint < joints; joint++) {
                List<TighteningRecord> made = tightenings(f, joint);
                stops.put(new WorstJointsSection.Place(f, joint), made);
                accumulator.addJoint(made, f < 2 ? Double.NaN : prevailing(f, joint));
            }
        }
        summary = accumulator.summarise(
                new StoppingReport("fixed number of joints", joints + " joints per family were asked for", 1, true));
    }

    private StudyPlan plan() {
        return new StudyPlan(
                "Invented <b>walkway</b>",
                JUDGE,
                families,
                strategies,
                List.of(new StudyPlan.NotRun(1, THRESHOLD, "needs a torque channel")),
                null,
                Methods.DEFAULT);
    }

    private List<TighteningRecord> tightenings(int f, int joint) {
        List<TighteningRecord> made = new ArrayList<>();
        for (int s = 0; s < strategies.size(); s++) {
            boolean notRun = f == 1 && s == THRESHOLD;
            boolean cutShort = f == 3 && s == ENERGY && joint >= 0.424 * joints;
            if (!notRun && !cutShort) {
                Random random = new Random(1_000_003L * s + 10_007L * f + joint);
                random.nextGaussian();
                double torque = MEAN_AND_SD[s][2 * f] + MEAN_AND_SD[s][2 * f + 1] * random.nextGaussian();
                made.add(record(f, s, joint, torque));
            }
        }
        return made;
    }

    HtmlReport.WorstJoints worst() {
        return new HtmlReport.WorstJoints(WorstJointsSection.choose(summary), stops, this::law);
    }

    static RunFacts facts() {
        return new RunFacts(
                List.of("M12 joints", "light tool"),
                "Every figure on this page is invented.",
                List.of(new RunFacts.Fact("Seed", "20250 (invented)"), new RunFacts.Fact("Bench", "0.1.0-test")),
                List.of());
    }

    JointLaw law(int family, int joint) {
        Random random = new Random(77L * family + joint);
        double snug = 2 * Math.PI * (1.5 + 2 * random.nextDouble());
        List<FreeTorque.Piece> pieces = new ArrayList<>();
        if (family >= 2) {
            double most = prevailing(family, joint);
            double from = snug - 2 * Math.PI;
            pieces.add(new FreeTorque.Piece(from, from + 2 * Math.PI, 0, most / (2 * Math.PI), 0));
            pieces.add(FreeTorque.Piece.constantFrom(from + 2 * Math.PI, most));
        }
        return new JointLaw(
                new TorqueTension(2.8e-4, 0.9e-3, KAPPA_M - 1.18e-3),
                new ClampLaw(STIFFNESS[family] * 1.75e-3 / (2 * Math.PI), snug, Math.toRadians(SEATING_DEG[family])),
                FreeTorque.of(0.2, pieces),
                1.05,
                Yielding.OFF,
                Galling.NONE);
    }

    private static double prevailing(int family, int joint) {
        return family < 2 ? 0 : 4 + (joint * 37 % 101) / 10.0 + (family == 3 ? 6 : 0);
    }

    private Family family(String name, String note) {
        Covariate covariate = note.contains("prevailing") && !note.contains("no prevailing")
                ? new Covariate(
                        "prevailing torque",
                        "N*m",
                        List.of(4.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 18.0, 20.0, 22.0, 24.0)
                                .subList(name.startsWith("fouled") ? 3 : 0, name.startsWith("fouled") ? 11 : 6))
                : null;
        return new Family(name, note, joints, joints, joints, 1, covariate);
    }

    private TighteningRecord record(int f, int s, int joint, double torque) {
        JointCurves curves = new JointCurves(law(f, joint));
        double deg = torque > 0 ? curves.angleForTorqueDeg(torque) : torque * 5;
        double clamped = Math.max(0, torque);
        Outcome outcome = clamped < 8.4
                ? Outcome.UNSEATED
                : clamped < 71.4 ? Outcome.LOW : clamped > 96.6 ? Outcome.HIGH : Outcome.IN_WINDOW;
        Verdict verdict = s < 2 && outcome != Outcome.IN_WINDOW ? Verdict.UNSURE : Verdict.REACHED;
        return new TighteningRecord(
                f,
                joint,
                joint,
                joint,
                0,
                joint,
                s,
                EndReason.SHUTOFF,
                verdict,
                outcome,
                clamped / KAPPA_M,
                clamped,
                prevailing(f, joint),
                deg,
                7,
                0.4,
                1,
                0);
    }
}
