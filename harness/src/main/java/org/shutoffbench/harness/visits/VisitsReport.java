package org.shutoffbench.harness.visits;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.audit.AuditCount;
import org.shutoffbench.harness.audit.AuditTally;
import org.shutoffbench.harness.audit.FailureMode;
import org.shutoffbench.harness.audit.Share;
import org.shutoffbench.harness.scenario.Costs;
import org.shutoffbench.harness.scenario.Scenario;

/**
 * One visit or two, for one strategy.
 *
 * @param scenario name
 * @param strategy name, with its settings
 * @param confidence that all bounds of the answer hold together, over all families; and those of costs and job together
 * @param costs what they are made of
 * @param threshold c_a, c_r and c_f
 * @param families one for each
 * @param answer the weakest of the families' answers
 * @param modes which failures the audit sees, over all families, whatever the tool said; each interval by itself
 * @param ways what each way costs and leaves
 * @param job what a job comes to
 */
public record VisitsReport(
        String scenario,
        String strategy,
        double confidence,
        Costs costs,
        Threshold threshold,
        List<FamilyVisits> families,
        Answer answer,
        List<ModeRow> modes,
        List<Way> ways,
        Job job) {

    /** All bounds of an answer, or of costs and job, hold together with this probability at least. */
    public static final double CONFIDENCE = 0.95;

    private static final int RATES_OF_AN_ANSWER = 4;
    private static final int RATES_OF_A_JOB = 5;
    private static final double SECONDS_PER_HOUR = 3600;

    /**
     * What an audit makes of a failure mode.
     *
     * @param mode for people
     * @param joints joints in it
     * @param rejected share that the audit rejects
     */
    public record ModeRow(String mode, long joints, Bounded rejected) {}

    public VisitsReport {
        families = List.copyOf(families);
        modes = List.copyOf(modes);
        ways = List.copyOf(ways);
    }

    /**
     * Asks the question.
     *
     * @param strategyName for people
     * @param strategy index in the count
     * @param jobJoints size of the job
     */
    public static VisitsReport of(
            Scenario scenario, Costs costs, AuditCount count, String strategyName, int strategy, long jobJoints) {
        List<AuditTally> tallies = new ArrayList<>();
        List<FamilyVisits> families = new ArrayList<>();
        Threshold threshold = Threshold.of(costs);
        int familyCount = scenario.families().size();
        double each = 1 - (1 - CONFIDENCE) / (RATES_OF_AN_ANSWER * familyCount);
        for (int f = 0; f < familyCount; f++) {
            AuditTally tally = count.tally(f, strategy);
            tallies.add(tally);
            families.add(FamilyVisits.of(scenario.families().get(f).name(), tally, threshold, each));
        }
        Ways ways = ways(costs, tallies);
        return new VisitsReport(
                scenario.name(),
                strategyName,
                CONFIDENCE,
                costs,
                threshold,
                families,
                families.stream()
                        .map(FamilyVisits::answer)
                        .min(Comparator.naturalOrder())
                        .orElseThrow(),
                modes(tallies),
                ways.all(),
                job(jobJoints, ways, tallies));
    }

    private static double eachOfAJob() {
        return 1 - (1 - CONFIDENCE) / RATES_OF_A_JOB;
    }

    private static Ways ways(Costs costs, List<AuditTally> tallies) {
        double each = eachOfAJob();
        return new Ways(
                costs,
                tallies.stream()
                        .mapToDouble(AuditTally::toolSecondsPerJoint)
                        .average()
                        .orElse(0),
                Bounded.of(pooled(tallies, AuditTally::called), each),
                Bounded.of(pooled(tallies, AuditTally::missed), each),
                Bounded.of(pooled(tallies, AuditTally::rejected), each),
                Bounded.of(pooled(tallies, AuditTally::escaped), each));
    }

    private static Job job(long joints, Ways ways, List<AuditTally> tallies) {
        List<Way> all = ways.all();
        return new Job(
                joints,
                ways.savedSeconds().times(joints / SECONDS_PER_HOUR),
                all.get(0).leftLow().times((double) joints),
                all.get(1).leftLow().times((double) joints),
                ways.uncaught(Bounded.of(pooled(tallies, AuditTally::caught), eachOfAJob()))
                        .times((double) joints));
    }

    private static List<ModeRow> modes(List<AuditTally> tallies) {
        List<ModeRow> rows = new ArrayList<>();
        for (FailureMode mode : FailureMode.values()) {
            Share share = pooled(tallies, tally -> tally.rejectedIn(mode));
            rows.add(new ModeRow(mode.title(), share.n(), Bounded.of(share, CONFIDENCE)));
        }
        return rows;
    }

    private static Share pooled(List<AuditTally> tallies, Function<AuditTally, Share> which) {
        return Share.pooled(tallies.stream().map(which).toList());
    }

    /** The family that asks for most clean joints; null where none asks. */
    public @Nullable FamilyVisits neediest() {
        return families.stream()
                .filter(f -> f.answer() == Answer.NOT_YET)
                .max(Comparator.comparingLong(FamilyVisits::moreJoints))
                .orElse(null);
    }
}
