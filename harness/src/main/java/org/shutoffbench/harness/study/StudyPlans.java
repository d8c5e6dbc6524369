package org.shutoffbench.harness.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.MedianDraws;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.scenario.Amount;
import org.shutoffbench.harness.scenario.Grouping;
import org.shutoffbench.harness.scenario.JointFamily;
import org.shutoffbench.harness.scenario.JointKey;
import org.shutoffbench.harness.scenario.Judgement;
import org.shutoffbench.harness.scenario.Part;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.StrategyEntry;
import org.shutoffbench.joint.JointLaw;

/** Makes the plan of a study from a bench. */
public final class StudyPlans {

    /** Name of the drawn number against which silent misses are counted, N m in SI. */
    public static final String COVARIATE = "prevailing torque";

    private static final int COVARIATE_CLASSES = 10;

    private StudyPlans() {}

    /** The plan for so many joints in every family. */
    public static StudyPlan of(Bench bench, int jointsPerFamily) {
        Scenario scenario = bench.scenario();
        List<Family> families = new ArrayList<>();
        for (int f = 0; f < scenario.families().size(); f++) {
            families.add(family(bench, f, jointsPerFamily));
        }
        List<Strategy> strategies = new ArrayList<>();
        for (int s = 0; s < scenario.strategies().size(); s++) {
            StrategyEntry entry = scenario.strategies().get(s);
            strategies.add(new Strategy(
                    entry.label(),
                    settingsKind(entry.settings()),
                    bench.contestants().get(s).listensTo().stream()
                            .sorted()
                            .map(c -> c.title())
                            .toList()));
        }
        return new StudyPlan(
                scenario.name(),
                judge(scenario.judgement()),
                families,
                strategies,
                List.of(),
                hardAndSoft(bench.population()),
                Methods.DEFAULT);
    }

    private static Family family(Bench bench, int family, int joints) {
        Grouping groups = bench.scenario().grouping();
        int last = joints - 1;
        return new Family(
                bench.scenario().families().get(family).name(),
                note(bench.population(), family),
                joints,
                groups.lot(last) + 1,
                groups.tool(last) + 1,
                groups.repeatsPerPiece(),
                covariate(bench.population(), family));
    }

    private static String note(Population population, int family) {
        DrawnCase median = median(population, family);
        double stiffnessKnPerMm = stiffnessNPerM(median) * 1e-6;
        String prevailing = range(prevailing(population, family));
        String fouling = range(range(population, family, JointKey.FOULING_TORQUE, Part.FOULING));
        return String.format(
                Locale.ROOT,
                "%.0f kN/mm, %s%s",
                stiffnessKnPerMm,
                prevailing.isEmpty() ? "no prevailing torque" : prevailing + " prevailing",
                fouling.isEmpty() ? "" : ", fouled by " + fouling);
    }

    private static String range(double[] leastAndMost) {
        if (leastAndMost[1] <= 0) {
            return "";
        }
        return leastAndMost[1] - leastAndMost[0] < 0.5
                ? String.format(Locale.ROOT, "%.0f N m", leastAndMost[1])
                : String.format(Locale.ROOT, "%.0f to %.0f N m", leastAndMost[0], leastAndMost[1]);
    }

    /** k_J = k_F 2 pi / P, N/m. */
    private static double stiffnessNPerM(DrawnCase drawn) {
        JointLaw law = drawn.law();
        return law.clamp().forcePerAngleNPerRad() / law.torqueTension().helixLeverM();
    }

    /** The covariate of a joint, N m; 0 where its family has no such part. */
    static double covariate(DrawnCase drawn) {
        return drawn.values().getOrDefault(COVARIATE, 0.0);
    }

    /** Full prevailing torque of a family, least and most, N m; 0 where it has none. */
    private static double[] prevailing(Population population, int family) {
        return range(population, family, JointKey.PREVAILING_TORQUE, Part.PREVAILING);
    }

    private static double[] range(Population population, int family, JointKey key, Part part) {
        JointFamily joints = population.scenario().families().get(family);
        Amount torque = joints.numbers().get(key);
        if (torque == null) {
            return new double[] {0, 0};
        }
        boolean always = joints.presence().getOrDefault(part, 0.0) == 1;
        return new double[] {always ? torque.lowest() : 0, torque.highest()};
    }

    private static @Nullable Covariate covariate(Population population, int family) {
        double[] range = prevailing(population, family);
        double least = Math.floor(range[0]);
        double most = Math.ceil(range[1]);
        if (most - least < 1) {
            return null;
        }
        List<Double> edges = new ArrayList<>();
        for (int i = 0; i <= COVARIATE_CLASSES; i++) {
            edges.add(least + (most - least) * i / COVARIATE_CLASSES);
        }
        return new Covariate(COVARIATE, "N*m", edges);
    }

    private static Judge judge(Judgement judgement) {
        Quantity quantity = switch (judgement.quantity()) {
            case CLAMPING_TORQUE -> Quantity.CLAMPING_TORQUE;
            case CLAMP_FORCE -> Quantity.CLAMP_FORCE;
        };
        return new Judge(quantity, judgement.target().si(), judgement.lowest(), judgement.highest());
    }

    /** The steepest and the flattest family without prevailing torque, where their torque rates differ by a factor of two. */
    private static StudyPlan.@Nullable TorqueRateFamilies hardAndSoft(Population population) {
        int hard = -1;
        int soft = -1;
        for (int f = 0; f < population.scenario().families().size(); f++) {
            if (covariate(median(population, f)) > 0) {
                continue;
            }
            hard = hard < 0 || torqueRate(population, f) > torqueRate(population, hard) ? f : hard;
            soft = soft < 0 || torqueRate(population, f) < torqueRate(population, soft) ? f : soft;
        }
        return hard >= 0 && torqueRate(population, hard) >= 2 * torqueRate(population, soft)
                ? new StudyPlan.TorqueRateFamilies(hard, soft)
                : null;
    }

    private static DrawnCase median(Population population, int family) {
        return population.draw(family, 0, new MedianDraws(0));
    }

    private static double torqueRate(Population population, int family) {
        JointLaw law = median(population, family).law();
        return law.clamp().forcePerAngleNPerRad() * law.torqueTension().kappaOnM();
    }

    private static Strategy.SettingsKind settingsKind(String settings) {
        for (Strategy.SettingsKind kind : Strategy.SettingsKind.values()) {
            if (kind.title().equals(settings)) {
                return kind;
            }
        }
        return Strategy.SettingsKind.GIVEN;
    }
}
