package org.shutoffbench.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoiseStreamTest {

    private static final NoiseStream NOISE = DrawKey.of(3, "s", "f").noise(Stream.SENSOR, 0, 0);

    /**
     * First outputs of SplitMix64 from state 1234567, as printed in Rosetta Code's task "Pseudo-random
     * numbers/Splitmix64"; number n of a stream is the generator's output n, counted from 1.
     */
    @Test
    void bitsAreThoseOfSplitMix64() {
        String[] published = {"6457827717110365317", "3203168211198807973", "9817491932198370423"};
        for (int n = 1; n <= published.length; n++) {
            long bits = Long.parseUnsignedLong(published[n - 1]);
            assertThat(NoiseStream.uniform(1234567, n)).isEqualTo(UniformBits.openInterval(bits));
            assertThat(NoiseStream.normal(1234567, n)).isEqualTo(NormalTable.at(bits));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 42, 0x9E3779B97F4A7C15L, 0x123456789ABCDEFL})
    void numbersAreStandardNormalUnderAnyKey(long key) {
        Sample.of(200_000, new NoiseStream(key)::normal).assertStandardNormal();
    }

    @Test
    void aLongStreamIsStandardNormal() {
        Sample.of(5_000_000, NOISE::normal).assertStandardNormal();
    }

    @Test
    void uniformsFillTheInterval() {
        Sample sample = Sample.of(1_000_000, NOISE::uniform);

        assertThat(sample.kolmogorovSmirnov(u -> u)).isLessThan(sample.ksLimit());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 100, 10_000})
    void numbersDoNotDependOnEarlierOnes(int lag) {
        Sample normals = Sample.of(1_000_000, NOISE::normal);
        Sample squares = Sample.of(1_000_000, n -> NOISE.normal(n) * NOISE.normal(n));

        assertThat(normals.serialCorrelation(lag)).isCloseTo(0, within(normals.correlationLimit()));
        assertThat(squares.serialCorrelation(lag)).isCloseTo(0, within(squares.correlationLimit()));
    }

    @Test
    void streamsOfNeighbouringIndicesAndBranchesAreIndependent() {
        DrawKey key = DrawKey.of(3, "s", "f");
        Sample here = Sample.of(200_000, NOISE::normal);
        long[] others = {
            key.noiseKey(Stream.SENSOR, 1, 0),
            key.noiseKey(Stream.SENSOR, 0, 1),
            key.noiseKey(Stream.OPERATOR, 0, 0),
            NoiseStream.branch(NOISE.key(), 0),
            NoiseStream.branch(NOISE.key(), 1),
            NOISE.key() + 1
        };
        for (long other : others) {
            Sample there = Sample.of(200_000, new NoiseStream(other)::normal);
            assertThat(here.correlationWith(there)).isCloseTo(0, within(here.correlationLimit()));
        }
    }

    @Test
    void branchesOfOneKeyDiffer() {
        Set<Long> keys = new HashSet<>();
        for (int branch = 0; branch < 1000; branch++) {
            keys.add(NoiseStream.branch(NOISE.key(), branch));
        }
        assertThat(keys).hasSize(1000).doesNotContain(NOISE.key());
    }

    @Test
    void anyNumberCanBeHadAgain() {
        double tenth = NOISE.normal(10);
        NOISE.normal(1_000_000_000_000L);

        assertThat(NOISE.normal(10)).isEqualTo(tenth).isEqualTo(NoiseStream.normal(NOISE.key(), 10));
        assertThat(NOISE.uniform(10)).isEqualTo(NoiseStream.uniform(NOISE.key(), 10));
    }
}
