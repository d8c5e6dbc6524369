package org.shutoffbench.controller.signal;

/** The last few numbers, newest first; the oldest is overwritten. */
public final class RingBuffer {

    private final float[] values;
    private int next;
    private int size;

    /** @param capacity how many numbers are kept, at least 1 */
    public RingBuffer(int capacity) {
        if (capacity < 1) {
            throw new IllegalArgumentException("capacity must be at least 1");
        }
        this.values = new float[capacity];
    }

    public void clear() {
        next = 0;
        size = 0;
    }

    public void add(float value) {
        values[next] = value;
        next = next + 1 == values.length ? 0 : next + 1;
        size = Math.min(size + 1, values.length);
    }

    /** How many numbers are held. */
    public int size() {
        return size;
    }

    /** The number added {@code age} additions ago, 0 for the newest; NaN where none is held. */
    public float get(int age) {
        if (age < 0 || age >= size) {
            return Float.NaN;
        }
        int index = next - 1 - age;
        return values[index < 0 ? index + values.length : index];
    }
}
