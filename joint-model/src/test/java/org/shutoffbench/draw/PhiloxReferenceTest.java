package org.shutoffbench.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Known answers of Philox4x32-10 from the file {@code tests/kat_vectors} of the Random123 distribution, which goes with
 * Salmon, Moraes, Dror and Shaw, "Parallel random numbers: as easy as 1, 2, 3", SC11 (2011).
 */
class PhiloxReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "00000000 00000000 00000000 00000000, 00000000 00000000, 6627e8d5 e169c58d bc57ac4c 9b00dbd8",
        "ffffffff ffffffff ffffffff ffffffff, ffffffff ffffffff, 408f276d 41c83b0e a20bc7c6 6d5451fd",
        "243f6a88 85a308d3 13198a2e 03707344, a4093822 299f31d0, d16cfe09 94fdcceb 5001e420 24126ea1"
    })
    void givesThePublishedBlocks(String counter, String key, String block) {
        int[] c = words(counter);
        int[] k = words(key);
        int[] expected = words(block);
        long joinedKey = ((long) k[1] << 32) | (k[0] & 0xFFFFFFFFL);

        long first = Philox.firstWords(c[0], c[1], c[2], c[3], joinedKey);
        long last = Philox.lastWords(c[0], c[1], c[2], c[3], joinedKey);

        assertThat(new int[] {(int) (first >>> 32), (int) first, (int) (last >>> 32), (int) last})
                .isEqualTo(expected);
    }

    private static int[] words(String hex) {
        String[] parts = hex.split(" ", -1);
        int[] words = new int[parts.length];
        for (int i = 0; i < parts.length; i++) {
            words[i] = Integer.parseUnsignedInt(parts[i], 16);
        }
        return words;
    }
}
