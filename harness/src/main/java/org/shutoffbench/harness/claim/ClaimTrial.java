package org.shutoffbench.harness.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.statistics.BinomialInterval;
import org.shutoffbench.harness.statistics.Interval;
import org.shutoffbench.harness.statistics.RateBound;
import org.shutoffbench.harness.statistics.VariablesPlan;

/**
 * A claim tried on simulated joints of one strategy: what share really fails, family by family, and how often the plans
 * would have accepted.
 *
 * @param claim the claim
 * @param strategy whose joints they are
 * @param shares failing joints by family
 * @param counting how often the plan that counts accepted
 * @param measuring how often the plan by variables did; null where there is none
 */
record ClaimTrial(
        Claim claim,
        String strategy,
        List<FamilyShare> shares,
        Acceptance counting,
        @Nullable Acceptance measuring) {

    /** Failing joints of one family; the estimate of the bank. */
    record FamilyShare(String family, long failing, long n, double below, double above) {

        double share() {
            return (double) failing / n;
        }

        double upper(double confidence) {
            return RateBound.upper((double) failing, (double) n, confidence);
        }

        double lower(double confidence) {
            return RateBound.lower((double) failing, (double) n, confidence);
        }
    }

    /**
     * How often a plan accepted.
     *
     * @param nominal what its operating characteristic promises for the share that really fails
     * @param accepted trials
     * @param trials all of them
     */
    record Acceptance(double nominal, long accepted, long trials) {

        double realised() {
            return (double) accepted / trials;
        }

        Interval interval(double confidence) {
            return BinomialInterval.CLOPPER_PEARSON.of(accepted, trials, confidence);
        }
    }

    /** What the joints say. */
    enum Answer {
        SUPPORTED,
        REFUTED,
        UNDECIDED
    }

    static ClaimTrial of(
            ClaimPlan plan,
            SimulatedJoints joints,
            int strategy,
            String name,
            List<String> familyNames,
            int trials,
            long seed) {
        Claim claim = plan.claim();
        double[] values = new double[joints.size()];
        boolean[] fails = new boolean[values.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = joints.value(strategy, i);
            fails[i] = claim.fails(values[i], joints.calledDone(strategy, i));
        }
        List<FamilyShare> shares = new ArrayList<>();
        for (int family : joints.families()) {
            shares.add(share(claim, joints, family, familyNames.get(family), values, fails));
        }
        double failing = shares.stream().mapToDouble(FamilyShare::failing).sum() / values.length;
        Sampler sampler = new Sampler(joints, claim.population().lots(), new SplittableRandom(seed));
        long accepted = 0;
        for (int t = 0; t < trials; t++) {
            int failed = 0;
            for (int place : sampler.draw(plan.counting().n())) {
                failed += fails[place] ? 1 : 0;
            }
            accepted += failed <= plan.counting().c() ? 1 : 0;
        }
        Acceptance counting = new Acceptance(plan.counting().acceptance(failing), accepted, trials);
        return new ClaimTrial(
                claim,
                name,
                shares,
                counting,
                plan.variables() == null ? null : measured(plan.variables(), claim, values, sampler, trials));
    }

    private static FamilyShare share(
            Claim claim, SimulatedJoints joints, int family, String name, double[] values, boolean[] fails) {
        long failing = 0;
        long n = 0;
        long below = 0;
        long above = 0;
        for (int i = 0; i < values.length; i++) {
            if (joints.familyOf(i) == family) {
                n++;
                failing += fails[i] ? 1 : 0;
                below += values[i] < claim.lowest() ? 1 : 0;
                above += values[i] > claim.highest() ? 1 : 0;
            }
        }
        return new FamilyShare(name, failing, n, (double) below / n, (double) above / n);
    }

    private static Acceptance measured(VariablesPlan plan, Claim claim, double[] values, Sampler sampler, int trials) {
        double lowest = claim.failure() == FailureRule.ABOVE ? Double.NEGATIVE_INFINITY : claim.lowest();
        double highest = claim.failure() == FailureRule.BELOW ? Double.POSITIVE_INFINITY : claim.highest();
        long accepted = 0;
        for (int t = 0; t < trials; t++) {
            double sum = 0;
            double squares = 0;
            double first = Double.NaN;
            for (int place : sampler.draw(plan.n())) {
                first = Double.isNaN(first) ? values[place] : first;
                double off = values[place] - first;
                sum += off;
                squares += off * off;
            }
            double mean = sum / plan.n();
            double sd = Math.sqrt(Math.max(0, (squares - sum * mean) / (plan.n() - 1)));
            accepted += plan.accepts(first + mean, sd, lowest, highest) ? 1 : 0;
        }
        double below = 0;
        double above = 0;
        for (double value : values) {
            below += value < lowest ? 1.0 / values.length : 0;
            above += value > highest ? 1.0 / values.length : 0;
        }
        return new Acceptance(plan.acceptance(below, above), accepted, trials);
    }

    long failing() {
        return shares.stream().mapToLong(FamilyShare::failing).sum();
    }

    long joints() {
        return shares.stream().mapToLong(FamilyShare::n).sum();
    }

    /** On every family the share must be shown to be small enough; on one it may be shown to be too large. */
    Answer answer() {
        double each = 1 - (1 - claim.confidence()) / shares.size();
        boolean all = true;
        for (FamilyShare share : shares) {
            if (share.lower(each) > claim.allowed()) {
                return Answer.REFUTED;
            }
            all &= share.upper(claim.confidence()) <= claim.allowed();
        }
        return all ? Answer.SUPPORTED : Answer.UNDECIDED;
    }

    /** Joints per family that would settle it at the rates seen; 0 where it is settled, -1 where none would. */
    long more() {
        long most = 0;
        for (FamilyShare share : shares) {
            long more = RateBound.moreToSettle(share.failing(), share.n(), claim.allowed(), claim.confidence());
            if (more < 0) {
                return -1;
            }
            most = Math.max(most, more);
        }
        return most;
    }

    /** The family with the largest failing share. */
    FamilyShare worst() {
        FamilyShare worst = shares.get(0);
        for (FamilyShare share : shares) {
            if (share.share() > worst.share()) {
                worst = share;
            }
        }
        return worst;
    }

    /** Whether the plan by variables accepts oftener than its law promises: its values are not normal. */
    boolean fooled() {
        return measuring != null
                && (double) failing() / joints() > claim.allowed()
                && measuring.interval(claim.confidence()).low() > 1 - claim.confidence();
    }

    /** Draws samples lot by lot, with replacement. */
    private static final class Sampler {
        private final SimulatedJoints joints;
        private final int claimedLots;
        private final SplittableRandom random;

        Sampler(SimulatedJoints joints, int claimedLots, SplittableRandom random) {
            this.joints = joints;
            this.claimedLots = claimedLots;
            this.random = random;
        }

        int[] draw(int n) {
            int perLot = claimedLots == 0 ? 1 : (n + claimedLots - 1) / claimedLots;
            int[] sample = new int[n];
            int drawn = 0;
            while (drawn < n) {
                int[] lot = joints.lots().get(random.nextInt(joints.lots().size()));
                int take = Math.min(Math.min(perLot, lot.length), n - drawn);
                for (int i = 0; i < take; i++) {
                    sample[drawn++] = lot[random.nextInt(lot.length)];
                }
            }
            return sample;
        }
    }
}
