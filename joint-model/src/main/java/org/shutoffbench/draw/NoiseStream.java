package org.shutoffbench.draw;

/**
 * Cheap noise for every sample: number n of a stream is a pure function of the stream's key and n, so it can be had in any
 * order, again, or not at all. About a tenth of the cost of a Philox draw; the key should come from
 * {@link DrawKey#noiseKey}.
 *
 * <p>Uniform and normal number n of one stream are made of the same bits: use one of the two per stream.
 *
 * <p>The bits are those of SplitMix64 [Steele2014]: key + n times the golden ratio in 64 bits, through a mixing function.
 * Two streams would overlap only where their keys differ by a small multiple of that constant: for keys made by Philox a
 * chance of about 2^-64 per pair of streams and sample.
 *
 * @param key 64 bits, all values allowed
 */
public record NoiseStream(long key) {

    private static final long GOLDEN_RATIO = 0x9E3779B97F4A7C15L;

    /** Standard normal number n; error against the exact inverse at most {@link NormalTable#ERROR_BOUND}. */
    public double normal(long n) {
        return normal(key, n);
    }

    /** Uniform number n in the open interval (0, 1). */
    public double uniform(long n) {
        return uniform(key, n);
    }

    /** {@link #normal(long)} for a key that is kept as a primitive. */
    public static double normal(long key, long n) {
        return NormalTable.at(bits(key, n));
    }

    /** {@link #uniform(long)} for a key that is kept as a primitive. */
    public static double uniform(long key, long n) {
        return UniformBits.openInterval(bits(key, n));
    }

    /** Key of a stream below this one, one per branch; independent of this stream's own numbers. */
    public static long branch(long key, int branch) {
        return mix(mix(~key) + (branch + 1L) * GOLDEN_RATIO);
    }

    private static long bits(long key, long n) {
        return mix(key + n * GOLDEN_RATIO);
    }

    /** Bijective mixing function of SplitMix64 (variant 13 of Stafford's mixers). */
    private static long mix(long value) {
        long z = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
