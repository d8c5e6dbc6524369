package org.shutoffbench.draw;

/**
 * Philox4x32-10, a counter-based generator: a fixed scrambling of a 128-bit counter under a 64-bit key. Stateless, so any
 * draw can be had alone and in any order. Source: [Salmon2011].
 */
final class Philox {

    private static final int ROUNDS = 10;
    private static final long MULTIPLIER_0 = 0xD2511F53L;
    private static final long MULTIPLIER_1 = 0xCD9E8D57L;
    /** Steps of the key from round to round: golden ratio and sqrt(3) - 1 in 32 bits. */
    private static final int WEYL_0 = 0x9E3779B9;

    private static final int WEYL_1 = 0xBB67AE85;
    private static final long LOW_WORD = 0xFFFFFFFFL;

    private Philox() {}

    /** Words 0 (high half) and 1 (low half) of the block. The key's high half is key word 1, its low half key word 0. */
    static long firstWords(int counter0, int counter1, int counter2, int counter3, long key) {
        return words(counter0, counter1, counter2, counter3, key, true);
    }

    /** Words 2 (high half) and 3 (low half) of the block. */
    static long lastWords(int counter0, int counter1, int counter2, int counter3, long key) {
        return words(counter0, counter1, counter2, counter3, key, false);
    }

    private static long words(int counter0, int counter1, int counter2, int counter3, long key, boolean first) {
        int c0 = counter0;
        int c1 = counter1;
        int c2 = counter2;
        int c3 = counter3;
        int k0 = (int) key;
        int k1 = (int) (key >>> 32);
        for (int round = 0; round < ROUNDS; round++) {
            long product0 = MULTIPLIER_0 * (c0 & LOW_WORD);
            long product1 = MULTIPLIER_1 * (c2 & LOW_WORD);
            c0 = (int) (product1 >>> 32) ^ c1 ^ k0;
            c1 = (int) product1;
            c2 = (int) (product0 >>> 32) ^ c3 ^ k1;
            c3 = (int) product0;
            k0 += WEYL_0;
            k1 += WEYL_1;
        }
        return first ? join(c0, c1) : join(c2, c3);
    }

    private static long join(int high, int low) {
        return ((long) high << 32) | (low & LOW_WORD);
    }
}
