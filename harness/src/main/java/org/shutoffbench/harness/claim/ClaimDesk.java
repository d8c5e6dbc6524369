package org.shutoffbench.harness.claim;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongConsumer;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.record.OutcomesFile;
import org.shutoffbench.harness.record.OutcomesFormat;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.run.Contestant;
import org.shutoffbench.harness.scenario.Amount;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.StrategyEntry;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.study.SummaryFile;

/** Tries claims on simulated joints and judges them on measured ones. */
public final class ClaimDesk {

    private static final double SAME = 1e-9;

    private ClaimDesk() {}

    /** A claim that a scenario or a run cannot speak to; the message says why and what to do. */
    public static final class NotComparableException extends RuntimeException {

        private static final long serialVersionUID = 1L;

        NotComparableException(String message) {
            super(message);
        }
    }

    /**
     * Tries claims on the joints of a scenario.
     *
     * @param claims at least one
     * @param strategies indices into the scenario's list, at least one
     * @param bank tightenings of each strategy, all families together
     * @param trials samples drawn for each plan
     * @throws NotComparableException where a claim is of something else than the scenario
     */
    public static ClaimPage tryOn(
            List<Claim> claims,
            Bench bench,
            List<Integer> strategies,
            int bank,
            int trials,
            long seed,
            int threads,
            LongConsumer progress)
            throws InterruptedException {
        List<ClaimTrial> done = new ArrayList<>();
        List<ClaimPlan> plans = new ArrayList<>();
        List<List<String>> untested = new ArrayList<>();
        Scenario scenario = bench.scenario();
        List<Contestant> contestants =
                strategies.stream().map(bench.contestants()::get).toList();
        List<String> names = scenario.families().stream().map(f -> f.name()).toList();
        List<List<Integer>> asked = new ArrayList<>();
        for (Claim claim : claims) {
            requireSame(claim, scenario);
            asked.add(families(claim, names));
        }
        Map<List<Integer>, SimulatedJoints> banks = new HashMap<>();
        for (int c = 0; c < claims.size(); c++) {
            Claim claim = claims.get(c);
            SimulatedJoints joints = banks.get(asked.get(c));
            if (joints == null) {
                joints = SimulatedJoints.tighten(
                        bench.with(contestants), claim.quantity(), asked.get(c), bank, threads, progress);
                banks.put(asked.get(c), joints);
            }
            ClaimPlan plan = ClaimPlan.of(claim);
            for (int s = 0; s < strategies.size(); s++) {
                StrategyEntry entry = scenario.strategies().get(strategies.get(s));
                String title = entry.label() + " (" + entry.settings() + ")";
                done.add(ClaimTrial.of(plan, joints, s, title, names, trials, seed));
                plans.add(plan);
                untested.add(untested(claim, scenario, joints));
            }
        }
        return TrialPage.of(done, plans, untested);
    }

    /**
     * Judges claims by files of measured joints, each claim by each file.
     *
     * @param claims at least one
     * @param measured at least one file, all laid out as the claims say
     * @param run whose simulated joints stand beside the measured ones; null for none
     * @param byVariables whether support comes from mean and spread instead of counts
     * @throws NotComparableException where a claim does not say how the files are laid out, or cannot be judged so
     */
    public static ClaimPage judge(
            List<Claim> claims, List<Path> measured, @Nullable SimulatedRun run, boolean byVariables)
            throws IOException {
        List<ClaimJudgement> judgements = new ArrayList<>();
        for (Claim claim : claims) {
            if (byVariables && claim.failure() == FailureRule.SILENT) {
                throw new NotComparableException("\"" + claim.name() + "\" counts what a tool calls done, which is no"
                        + " measured value; judge it without --by variables");
            }
            for (Path file : measured) {
                judgements.add(new ClaimJudgement(
                        claim,
                        String.valueOf(file.getFileName()),
                        measurements(claim, file),
                        run == null ? null : simulated(claim, run),
                        byVariables));
            }
        }
        return JudgementPage.of(judgements);
    }

    private static Measurements measurements(Claim claim, Path file) throws IOException {
        Claim.MeasuredColumns columns = claim.measured();
        if (columns == null) {
            throw new NotComparableException("the claim does not say how " + file + " is laid out; add"
                    + " measured: {value: COLUMN, unit: "
                    + (claim.quantity() == JudgedQuantity.CLAMP_FORCE ? "kN" : "N*m") + ", joint: COLUMN} to it");
        }
        return Measurements.read(file, claim, columns);
    }

    /**
     * A finished run whose joints stand beside measured ones.
     *
     * @param strategy as in the run, with its settings: {@code blow count (home)}
     * @param weight of a simulated joint against a measured one, 0 to 1
     */
    public record SimulatedRun(Path folder, String strategy, double weight) {}

    private static ClaimJudgement.Simulated simulated(Claim claim, SimulatedRun run) throws IOException {
        Path counted = run.folder().resolve(RunFolder.SUMMARY);
        if (!Files.isRegularFile(counted)) {
            throw new NotComparableException("--simulated " + run.folder() + " holds no finished run: "
                    + RunFolder.SUMMARY + " is not there; name the folder that \"run\" wrote with --out");
        }
        StudySummary summary = SummaryFile.read(counted);
        OutcomesFormat format = summary.outcomesFormat();
        int strategy = -1;
        List<String> known = new ArrayList<>();
        for (int s = 0; s < summary.strategies().size(); s++) {
            String title = summary.strategies().get(s).name() + " ("
                    + summary.strategies().get(s).settings().title() + ")";
            known.add(title);
            strategy = title.equals(run.strategy()) ? s : strategy;
        }
        if (strategy < 0) {
            throw new NotComparableException("--strategy \"" + run.strategy() + "\" is not in " + run.folder()
                    + ", which has " + String.join(", ", known));
        }
        int wanted = strategy;
        List<Integer> families =
                families(claim, summary.families().stream().map(f -> f.name()).toList());
        long[] counts = new long[2];
        OutcomesFile.read(run.folder().resolve(RunFolder.OUTCOMES), format, row -> {
            if (row.strategy() == wanted && families.contains(row.family())) {
                double value =
                        claim.quantity() == JudgedQuantity.CLAMP_FORCE ? row.clampForceN() : row.clampingTorqueNm();
                counts[0] += claim.fails(value, row.verdict() == Verdict.REACHED) ? 1 : 0;
                counts[1]++;
            }
        });
        return new ClaimJudgement.Simulated(
                run.folder().getFileName() + ", " + run.strategy(), counts[0], counts[1], run.weight());
    }

    private static List<Integer> families(Claim claim, List<String> names) {
        List<Integer> families = new ArrayList<>();
        if (claim.population().anyFamily()) {
            for (int f = 0; f < names.size(); f++) {
                families.add(f);
            }
            return families;
        }
        for (String name : claim.population().families()) {
            int family = names.indexOf(name);
            if (family < 0) {
                throw new NotComparableException("the claim is of the family \"" + name
                        + "\", which the scenario does not have; it has " + String.join(", ", names));
            }
            families.add(family);
        }
        return families;
    }

    private static void requireSame(Claim claim, Scenario scenario) {
        if (scenario.judgement().quantity() != claim.quantity()) {
            throw new NotComparableException(
                    "the claim is of " + claim.quantity().title() + ", the scenario sets its tool to "
                            + scenario.judgement().quantity().title() + "; try the claim on a scenario that judges "
                            + claim.quantity().title());
        }
        double target = scenario.judgement().target().si();
        if (Math.abs(target - claim.target()) > SAME * target) {
            throw new NotComparableException("the claim's target is " + new ClaimWords(claim).value(claim.target())
                    + ", the scenario sets its tool to " + scenario.judgement().target()
                    + "; try the claim on a scenario with its own target");
        }
    }

    private static List<String> untested(Claim claim, Scenario scenario, SimulatedJoints joints) {
        List<String> sentences = new ArrayList<>();
        Claim.Population p = claim.population();
        if (p.anyFamily()) {
            sentences.add("The claim is of any joint; tried were the scenario's families: "
                    + String.join(
                            ", ",
                            scenario.families().stream().map(f -> f.name()).toList()) + ".");
        }
        Amount supply = scenario.supply();
        if (supply.lowest() > p.batteryFrom() + SAME || supply.highest() < p.batteryTo() - SAME) {
            sentences.add("The claim is of a battery from " + ClaimWords.percent(p.batteryFrom()) + " to "
                    + ClaimWords.percent(p.batteryTo()) + " %; the scenario draws "
                    + ClaimWords.percent(supply.lowest())
                    + " to " + ClaimWords.percent(supply.highest()) + " %.");
        }
        sentences.add(
                joints.lots().size() == joints.size()
                        ? "The scenario makes every joint a lot and a tool of its own, so trials draw single joints."
                        : "Trials draw from " + joints.lots().size() + " simulated lots.");
        sentences.add("Whatever the model leaves out: wear, heat, misuse, joints of other kinds.");
        return sentences;
    }
}
