package org.shutoffbench.harness.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.shutoffbench.draw.NoiseStream;
import org.shutoffbench.harness.population.DrawSource;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.population.ScatterSource;
import org.shutoffbench.harness.statistics.McNemar;

/**
 * A against A: the same strategy on the same joints, once more with other sensor noise. Nothing tells the two apart, so the
 * exact test must not either.
 */
class SecondSensorStreamTest {

    private static final int STUDIES = 40;
    private static final int JOINTS = 40;
    private static final double LEVEL = 0.05;

    /** The draws of a joint, but another noise. */
    private record OtherNoise(DrawSource draws) implements DrawSource {
        @Override
        public double uniform(ScatterSource source) {
            return draws.uniform(source);
        }

        @Override
        public long noiseKey() {
            return NoiseStream.branch(draws.noiseKey(), 97);
        }
    }

    @Test
    void theSameStrategyIsSeldomToldApartFromItself() {
        // aimed near the upper edge, so that noise decides about many joints
        Bench bench = Benches.scattered("strategies: [{name: energy per blow, settings: {aim: 1.1}}]");
        ClosedLoop loop = bench.newLoop();
        int different = 0;
        int rejected = 0;
        int disagreed = 0;
        int inWindowA = 0;
        int inWindowB = 0;
        for (int study = 0; study < STUDIES; study++) {
            long onlyA = 0;
            long onlyB = 0;
            for (int joint = study * JOINTS; joint < (study + 1) * JOINTS; joint++) {
                DrawSource draws = bench.population().keyed(0, joint);
                DrawnCase other = bench.population().draw(0, joint, new OtherNoise(draws));
                TighteningRecord a = bench.tighten(loop, 0, joint)[0];
                TighteningRecord b = bench.tighten(loop, other)[0];
                different += a.clampForceN() == b.clampForceN() ? 0 : 1;
                boolean inA = a.outcome() == Outcome.IN_WINDOW;
                boolean inB = b.outcome() == Outcome.IN_WINDOW;
                onlyA += inA && !inB ? 1 : 0;
                onlyB += inB && !inA ? 1 : 0;
                inWindowA += inA ? 1 : 0;
                inWindowB += inB ? 1 : 0;
            }
            disagreed += (int) (onlyA + onlyB);
            rejected += McNemar.EXACT.p(onlyA, onlyB) < LEVEL ? 1 : 0;
        }
        assertThat(different).as("the noise is another one").isGreaterThan(STUDIES * JOINTS / 4);
        assertThat(disagreed).as("joints on which A and A differ").isGreaterThan(20);
        // an exact test rejects at most so often: 99.9 % point of the binomial
        assertThat(rejected)
                .isLessThanOrEqualTo(BinomialDistribution.of(STUDIES, LEVEL).inverseCumulativeProbability(0.999));
        // all studies together: the difference in points lies within 3.3 standard errors of none
        double n = STUDIES * JOINTS;
        double standardError = Math.sqrt(disagreed) / n;
        assertThat(Math.abs(inWindowA - inWindowB) / n).isLessThanOrEqualTo(3.3 * standardError);
        assertThat(List.of(inWindowA, inWindowB)).allMatch(count -> count > 0.2 * n && count < 0.98 * n);
    }
}
