package org.shutoffbench.draw;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * The key under which one family of one scenario is drawn. Every draw is a pure function of this key and of (stream,
 * index at the stream's own level, draw number): it depends on no other draw, thread or strategy.
 *
 * <p>The key is the first 8 bytes, big end first, of SHA-256 over: the root seed in 8 bytes, the scenario name's length in
 * bytes in 4 bytes and the name in UTF-8, the family name's length and the name likewise, all big end first. Counter words
 * of Philox4x32-10 [Salmon2011]: draw number; stream; low and high half of the index.
 *
 * <p>Drawing allocates nothing.
 *
 * @param bits the key's 64 bits
 */
public record DrawKey(long bits) {

    private static final int NOISE_KEY = 0x100;

    /** The key of one family. */
    public static DrawKey of(long rootSeed, String scenario, String family) {
        byte[] scenarioBytes = scenario.getBytes(StandardCharsets.UTF_8);
        byte[] familyBytes = family.getBytes(StandardCharsets.UTF_8);
        ByteBuffer message =
                ByteBuffer.allocate(Long.BYTES + 2 * Integer.BYTES + scenarioBytes.length + familyBytes.length);
        message.putLong(rootSeed);
        message.putInt(scenarioBytes.length).put(scenarioBytes);
        message.putInt(familyBytes.length).put(familyBytes);
        return new DrawKey(ByteBuffer.wrap(sha256(message.array())).getLong());
    }

    /** One uniform number in the open interval (0, 1): an odd multiple of 2^-53. */
    public double uniform(Stream stream, long index, int draw) {
        return UniformBits.openInterval(word(stream.code(), index, draw));
    }

    /** One standard normal number, made of the one uniform of the same arguments by {@link NormalQuantile#at}. */
    public double normal(Stream stream, long index, int draw) {
        return NormalQuantile.at(uniform(stream, index, draw));
    }

    /** One number from a distribution, made of the one uniform of the same arguments. */
    public double draw(Distribution distribution, Stream stream, long index, int draw) {
        return distribution.quantile(uniform(stream, index, draw));
    }

    /**
     * Key of a {@link NoiseStream}, for noise that is needed at every sample. Noise keys and draws of the same arguments
     * are independent.
     */
    public long noiseKey(Stream stream, long index, int draw) {
        return word(stream.code() | NOISE_KEY, index, draw);
    }

    /** The noise stream of {@link #noiseKey}; makes one small object. */
    public NoiseStream noise(Stream stream, long index, int draw) {
        return new NoiseStream(noiseKey(stream, index, draw));
    }

    private long word(int stream, long index, int draw) {
        return Philox.firstWords(draw, stream, (int) index, (int) (index >>> 32), bits);
    }

    private static byte[] sha256(byte[] message) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(message);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform must have SHA-256", e);
        }
    }
}
