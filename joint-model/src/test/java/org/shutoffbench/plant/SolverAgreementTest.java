package org.shutoffbench.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.shutoffbench.plant.Tightening.Reach;

/**
 * The fast plant against the reference plant, two solvers that share no numerics. Sized by the system property
 * {@code plantAgreementJoints}; 200 by default.
 */
class SolverAgreementTest {

    private static final int JOINTS = Integer.getInteger("plantAgreementJoints", 200);

    /**
     * Joints on which the solvers still disagree: open, not excused. Seed 154 ends 1 % apart after 40 blows with equal counts;
     * the cause is not known. Any other disagreement fails, and so does this one once it is gone: take it out then.
     */
    private static final List<String> OPEN = List.of("seed 154:");

    /**
     * Joints of the first 200 whose number of bounces differs between the solvers: open. Only contacts that graze
     * (penetration under 1e-7 rad) may differ in the end; it has not been shown that these are such.
     */
    private static final long OPEN_BOUNCES = 7;

    @Test
    void bothSolversAgreeOnRandomJointsOfBothTools() {
        List<String> misses = new ArrayList<>();
        long bounces = LongStream.range(0, JOINTS)
                .parallel()
                .filter(seed -> !agrees(seed, misses))
                .count();
        assertThat(misses).as("disagreements").allMatch(miss -> OPEN.stream().anyMatch(miss::startsWith));
        assertThat(misses).hasSameSizeAs(OPEN);
        assertThat(bounces).as("joints with another number of bounces").isLessThanOrEqualTo(OPEN_BOUNCES);
    }

    private static boolean agrees(long seed, List<String> misses) {
        Tightening tightening = Tightening.draw(seed, Reach.FAMILIES);
        PlantState fast = tightening.on(new FastPlant());
        PlantState reference = tightening.on(new ReferencePlant());
        double allowed = 1e-4 * reference.clampForceN + 1;
        if (!(Math.abs(fast.clampForceN - reference.clampForceN) <= allowed)
                || fast.blows != reference.blows
                || fast.guardSteps + reference.guardSteps > 0) {
            synchronized (misses) {
                misses.add("seed " + seed + ": clamp force " + fast.clampForceN + " and " + reference.clampForceN
                        + " N, blows " + fast.blows + " and " + reference.blows);
            }
        }
        return fast.bounces == reference.bounces;
    }
}
