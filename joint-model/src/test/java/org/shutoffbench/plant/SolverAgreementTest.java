package org.shutoffbench.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.shutoffbench.plant.Tightening.Reach;

/**
 * The fast plant against the reference plant, two solvers that share no numerics. Sized by the system property
 * {@code plantAgreementJoints}; 200 by default.
 *
 * <p>Weak drive on a weak battery can set a tool hopping from bounce to bounce, where every blow multiplies whatever
 * error it inherits. Such a run has no result to agree on: the reference plant itself, at a tolerance of 1e-9 instead of
 * 1e-10, moves by more than a hundredth of the allowance. These are told apart by that test alone and must stay rare.
 *
 * <p>Both plants count the instants at which their guard against endless events stepped on. The fast plant's count must be
 * zero. The reference plant meets one now and then where a lug force ends with next to no slope: its located root and its
 * rounded force then disagree on the side, and one step of 1 ns passes the spot. Such runs count only if all else agrees.
 */
class SolverAgreementTest {

    private static final int JOINTS = Integer.getInteger("plantAgreementJoints", 200);

    private enum Result {
        AGREES,
        AGREES_BUT_FOR_GRAZES,
        AGREES_BUT_FOR_THE_REFERENCES_GUARD,
        UNSTEADY,
        DIFFERS
    }

    @Test
    void bothSolversAgreeOnRandomJointsOfBothTools() {
        Map<Result, List<Long>> seeds = LongStream.range(0, JOINTS)
                .parallel()
                .boxed()
                .collect(Collectors.groupingBy(SolverAgreementTest::compare));
        assertThat(seeds.getOrDefault(Result.DIFFERS, List.of()))
                .as("seeds that differ in clamp force, blows or bounces; all: %s", counts(seeds))
                .isEmpty();
        assertThat(count(seeds, Result.UNSTEADY))
                .as("unsteady runs: %s", counts(seeds))
                .isLessThanOrEqualTo(JOINTS / 1000);
        assertThat(count(seeds, Result.AGREES_BUT_FOR_THE_REFERENCES_GUARD))
                .as("runs in which the reference's guard stepped on: %s", counts(seeds))
                .isLessThanOrEqualTo(3 * JOINTS / 1000);
        // lugs that touch or part by less than 1e-7 rad may be seen to do so by one and not by the other
        assertThat(count(seeds, Result.AGREES_BUT_FOR_GRAZES))
                .as("runs with another number of grazing bounces: %s", counts(seeds))
                .isLessThanOrEqualTo(JOINTS / 1000);
    }

    /** The one joint of 3,000 that was found with another number of bounces: the lugs part by 6e-8 rad. */
    @Test
    void aBounceThatOnlyOneSolverSeesGrazes() {
        assertThat(compare(1712)).isEqualTo(Result.AGREES_BUT_FOR_GRAZES);
    }

    private static int grazes(Tightening tightening) {
        return Math.max(tightening.grazes(new FastPlant()), tightening.grazes(new ReferencePlant()));
    }

    private static Result compare(long seed) {
        Tightening tightening = Tightening.draw(seed, Reach.FAMILIES);
        Tightening.End fast = tightening.run(new FastPlant());
        Tightening.End reference = tightening.run(new ReferencePlant());
        double allowed = 1e-4 * reference.clampForceN() + 1;
        if (Math.abs(fast.clampForceN() - reference.clampForceN()) <= allowed
                && fast.blows() == reference.blows()
                && fast.guardSteps() == 0) {
            int bounces = Math.abs(fast.bouncesAtStop() - reference.bouncesAtStop());
            if (bounces > 0) {
                return bounces <= grazes(tightening) ? Result.AGREES_BUT_FOR_GRAZES : Result.DIFFERS;
            }
            return reference.guardSteps() > 0 ? Result.AGREES_BUT_FOR_THE_REFERENCES_GUARD : Result.AGREES;
        }
        Tightening.End coarser = tightening.run(new ReferencePlant(10 * ReferencePlant.TOLERANCE));
        boolean moves = Math.abs(coarser.clampForceN() - reference.clampForceN()) > 0.01 * allowed
                || coarser.blows() != reference.blows();
        return moves ? Result.UNSTEADY : Result.DIFFERS;
    }

    private static int count(Map<Result, List<Long>> seeds, Result result) {
        return seeds.getOrDefault(result, List.of()).size();
    }

    private static String counts(Map<Result, List<Long>> seeds) {
        return seeds.entrySet().stream()
                .map(e -> e.getKey() + " " + e.getValue().size()
                        + (e.getKey() == Result.AGREES ? "" : " (seeds " + e.getValue() + ")"))
                .collect(Collectors.joining(", "));
    }
}
