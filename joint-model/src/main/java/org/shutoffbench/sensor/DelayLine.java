package org.shutoffbench.sensor;

/** Hands out a signal late; between two samples in a straight line. */
final class DelayLine {

    private final double[] ring;
    private final int whole;
    private final double part;
    private int head;

    DelayLine(long latencyNs, long periodNs) {
        whole = Math.toIntExact(latencyNs / periodNs);
        part = (double) (latencyNs % periodNs) / periodNs;
        ring = new double[whole + 2];
    }

    /** Fills the past with a value. */
    void fill(double value) {
        java.util.Arrays.fill(ring, value);
        head = 0;
    }

    /** Takes the newest value and gives the one of a latency ago. */
    double push(double value) {
        head = head + 1 == ring.length ? 0 : head + 1;
        ring[head] = value;
        double later = ring[before(whole)];
        double earlier = ring[before(whole + 1)];
        return later + part * (earlier - later);
    }

    private int before(int samples) {
        int index = head - samples;
        return index < 0 ? index + ring.length : index;
    }

    void copyFrom(DelayLine other) {
        System.arraycopy(other.ring, 0, ring, 0, ring.length);
        head = other.head;
    }
}
