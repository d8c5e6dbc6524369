package org.shutoffbench.harness.statistics;

import org.jspecify.annotations.Nullable;

/**
 * Counts of whole numbers in fixed classes: one class a number below 4096, then 2048 equal classes from each power of
 * two to the next, so that no class is wider than 1/2048 of its lower edge. Octaves without values take no memory.
 *
 * <p>The edges depend on nothing, so histograms merge exactly.
 */
public final class OctaveHistogram {

    private static final int BITS = 11;
    private static final int PER_OCTAVE = 1 << BITS;
    private static final int OCTAVES = 54 - BITS;

    private final long[] @Nullable [] counts = new long[OCTAVES][];
    private long n;

    /** Counts one number, 0 to 2^52; a negative one counts as 0. */
    public void add(long value) {
        long counted = Math.max(0, value);
        int octave = octaveOf(counted);
        octave(octave)[classIn(octave, counted)]++;
        n++;
    }

    /** Adds all that another has counted. */
    public void merge(OctaveHistogram other) {
        for (int octave = 0; octave < OCTAVES; octave++) {
            long[] theirs = other.counts[octave];
            if (theirs != null) {
                long[] ours = octave(octave);
                for (int i = 0; i < theirs.length; i++) {
                    ours[i] += theirs[i];
                }
            }
        }
        n += other.n;
    }

    /** Numbers counted. */
    public long n() {
        return n;
    }

    /**
     * The class that holds an order statistic.
     *
     * @param rank 1 to n
     */
    public Bin binOfRank(long rank) {
        if (rank < 1 || rank > n) {
            throw new IllegalArgumentException("rank " + rank + " of " + n);
        }
        Walk walk = new Walk();
        while (walk.next()) {
            if (walk.cumulative >= rank) {
                return walk.bin();
            }
        }
        throw new IllegalStateException("counts do not add up to " + n);
    }

    /** Visits every class that holds something, ascending. */
    public void forEach(BinVisitor visitor) {
        Walk walk = new Walk();
        while (walk.next()) {
            visitor.visit(walk.bin(), walk.cumulative);
        }
    }

    /**
     * A class of whole numbers.
     *
     * @param least smallest number in it
     * @param greatest greatest number in it
     * @param count numbers counted in it
     */
    public record Bin(long least, long greatest, long count) {}

    /** Takes the classes one by one. */
    @FunctionalInterface
    public interface BinVisitor {
        /** One class and how many numbers lie in it or below. */
        void visit(Bin bin, long cumulative);
    }

    private long[] octave(int octave) {
        long[] found = counts[octave];
        if (found == null) {
            found = new long[PER_OCTAVE];
            counts[octave] = found;
        }
        return found;
    }

    /** Octave 0 holds 0 to 2047 singly, octave k > 0 holds 2^(k+10) to 2^(k+11) - 1. */
    private static int octaveOf(long value) {
        return Math.max(0, 64 - Long.numberOfLeadingZeros(value) - BITS);
    }

    private static int classIn(int octave, long value) {
        return octave == 0 ? (int) value : (int) ((value >>> (octave - 1)) - PER_OCTAVE);
    }

    private final class Walk {
        private int octave;
        private int place = -1;
        private long count;
        private long cumulative;

        boolean next() {
            place++;
            while (octave < OCTAVES) {
                long[] classes = counts[octave];
                while (classes != null && place < classes.length) {
                    if (classes[place] > 0) {
                        count = classes[place];
                        cumulative += count;
                        return true;
                    }
                    place++;
                }
                octave++;
                place = 0;
            }
            return false;
        }

        Bin bin() {
            if (octave == 0) {
                return new Bin(place, place, count);
            }
            long least = (long) (place + PER_OCTAVE) << (octave - 1);
            return new Bin(least, least + (1L << (octave - 1)) - 1, count);
        }
    }
}
