package org.shutoffbench.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DrawKeyTest {

    private static final DrawKey KEY = DrawKey.of(7, "a scenario", "a family");

    /** Expected keys computed with Python's hashlib from the layout in the documentation. */
    @Test
    void keyIsTheDocumentedHash() {
        assertThat(DrawKey.of(1234, "harbour walkway", "hard plain").bits()).isEqualTo(0x5e45b4ff09a5c464L);
        assertThat(DrawKey.of(-1, "", "Stiffn\u00e4").bits()).isEqualTo(0x88b9a59422ed799cL);
    }

    @Test
    void keyTellsSeedScenarioAndFamilyApart() {
        Set<Long> keys = new HashSet<>();
        keys.add(DrawKey.of(1, "ab", "c").bits());
        keys.add(DrawKey.of(1, "a", "bc").bits());
        keys.add(DrawKey.of(1, "c", "ab").bits());
        keys.add(DrawKey.of(2, "ab", "c").bits());
        keys.add(DrawKey.of(1L << 32, "ab", "c").bits());

        assertThat(keys).hasSize(5);
    }

    /** With the published answer for counter and key zero: word 0 6627e8d5, word 1 e169c58d (stream code cleared). */
    @Test
    void uniformIsMadeOfTheFirstTwoWords() {
        long bits = Philox.firstWords(3, Stream.PIECE.code(), 5, 1, KEY.bits());

        assertThat(KEY.uniform(Stream.PIECE, (1L << 32) + 5, 3)).isEqualTo(((bits >>> 12) + 0.5) / (1L << 52));
        assertThat(UniformBits.openInterval(0x6627e8d5e169c58dL)).isCloseTo(0x6627e8d5L / 0x1p32, within(0x1p-32));
    }

    @Test
    void uniformStaysInsideTheOpenInterval() {
        assertThat(UniformBits.openInterval(0)).isEqualTo(0x1p-53);
        assertThat(UniformBits.openInterval(-1)).isEqualTo(1 - 0x1p-53).isLessThan(1);
        assertThat(UniformBits.openInterval(~0x123456789ABCDEFL))
                .isEqualTo(1 - UniformBits.openInterval(0x123456789ABCDEFL));
    }

    @Test
    void drawIsAPureFunctionOfItsArguments() {
        double first = KEY.normal(Stream.LOT, 11, 2);
        KEY.normal(Stream.LOT, 12, 2);

        assertThat(KEY.normal(Stream.LOT, 11, 2)).isEqualTo(first);
        assertThat(first).isEqualTo(NormalQuantile.at(KEY.uniform(Stream.LOT, 11, 2)));
        assertThat(KEY.draw(new Uniform(2, 4), Stream.LOT, 11, 2)).isEqualTo(2 + 2 * KEY.uniform(Stream.LOT, 11, 2));
        assertThat(KEY.noise(Stream.SENSOR, 4, 0).key()).isEqualTo(KEY.noiseKey(Stream.SENSOR, 4, 0));
    }

    @Test
    void everyStreamIndexAndDrawGivesItsOwnWord() {
        Set<Double> uniforms = new HashSet<>();
        Set<Long> noiseKeys = new HashSet<>();
        int count = 0;
        for (Stream stream : Stream.values()) {
            for (long index : new long[] {0, 1, 2, 1L << 32, -1}) {
                for (int draw = -1; draw < 3; draw++) {
                    uniforms.add(KEY.uniform(stream, index, draw));
                    noiseKeys.add(KEY.noiseKey(stream, index, draw));
                    count++;
                }
            }
        }
        assertThat(uniforms).hasSize(count);
        assertThat(noiseKeys).hasSize(count);
    }

    @Test
    void noiseKeyIsNotAWordThatADrawShows() {
        long drawn = Philox.firstWords(0, Stream.SENSOR.code(), 9, 0, KEY.bits());

        assertThat(KEY.noiseKey(Stream.SENSOR, 9, 0)).isNotEqualTo(drawn);
    }

    @ParameterizedTest
    @EnumSource(Stream.class)
    void normalsOfEveryStreamAreNormal(Stream stream) {
        Sample sample = Sample.of(100_000, i -> KEY.normal(stream, i, 0));

        sample.assertStandardNormal();
    }

    @Test
    void drawsOfOneIndexAreIndependent() {
        Sample first = Sample.of(100_000, i -> KEY.normal(Stream.PIECE, i, 0));
        Sample second = Sample.of(100_000, i -> KEY.normal(Stream.PIECE, i, 1));

        assertThat(first.correlationWith(second)).isCloseTo(0, within(first.correlationLimit()));
    }

    @Test
    void streamsOfOneIndexAreIndependent() {
        Stream[] streams = Stream.values();
        Sample[] samples = new Sample[streams.length];
        for (int s = 0; s < streams.length; s++) {
            Stream stream = streams[s];
            samples[s] = Sample.of(50_000, i -> KEY.normal(stream, i, 0));
        }
        for (int a = 0; a < samples.length; a++) {
            for (int b = 0; b < a; b++) {
                assertThat(samples[a].correlationWith(samples[b])).isCloseTo(0, within(samples[a].correlationLimit()));
            }
        }
    }
}
