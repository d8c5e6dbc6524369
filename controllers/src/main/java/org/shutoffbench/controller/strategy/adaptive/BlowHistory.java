package org.shutoffbench.controller.strategy.adaptive;

/**
 * The nut's path, blow by blow, in bounded memory. A stretch is what one or more blows did: angle at its start, energy of
 * its blows, variance of its length. When memory is full the two neighbours with the fewest blows are joined, the newest
 * never: energies add, lengths add, so the energy balance stays exact.
 */
final class BlowHistory {

    /** Stretches that are kept. */
    static final int CAPACITY = 32;
    /** Newest stretches that are never joined. */
    private static final int NEWEST = 14;

    /** Angle at the start of each stretch, from the first rest, rad; one more than there are stretches. */
    final float[] startRad = new float[CAPACITY + 1];

    final float[] energyJ = new float[CAPACITY];
    /** Relative variance of each stretch's energy. */
    final float[] energyVariance = new float[CAPACITY];

    /** Torque at the end of each stretch by its last pulse, N m; 0 where there was none. */
    final float[] pulseNm = new float[CAPACITY];

    final float[] varianceRad2 = new float[CAPACITY];
    final float[] blows = new float[CAPACITY];
    int size;

    void reset() {
        size = 0;
        startRad[0] = 0;
    }

    /** Adds what the newest blow did. */
    void add(
            float advanceRad,
            float blowEnergyJ,
            float blowCount,
            float relativeEnergyVariance,
            float advanceVarianceRad2) {
        if (size == CAPACITY) {
            join(leastPair());
        }
        energyJ[size] = blowEnergyJ;
        varianceRad2[size] = advanceVarianceRad2;
        blows[size] = blowCount;
        energyVariance[size] = relativeEnergyVariance;
        pulseNm[size] = 0;
        startRad[size + 1] = startRad[size] + advanceRad;
        size++;
    }

    /** Sets anew what the newest stretch was. */
    void correctNewest(float advanceRad, float blowEnergyJ, float blowCount, float advanceVarianceRad2) {
        startRad[size] = startRad[size - 1] + advanceRad;
        energyJ[size - 1] = blowEnergyJ;
        blows[size - 1] = blowCount;
        varianceRad2[size - 1] = advanceVarianceRad2;
    }

    float endRad() {
        return startRad[size];
    }

    float lengthRad(int stretch) {
        return startRad[stretch + 1] - startRad[stretch];
    }

    /** Torque that the newest blow's pulse tells, N m; 0 for none. */
    void hearPulse(float torqueNm) {
        pulseNm[size - 1] = torqueNm;
    }

    private float joinedVariance(int first) {
        float one = energyJ[first];
        float other = energyJ[first + 1];
        float sum = one + other;
        return (one * one * energyVariance[first] + other * other * energyVariance[first + 1]) / (sum * sum);
    }

    private int leastPair() {
        int least = 0;
        for (int i = 1; i < CAPACITY - NEWEST; i++) {
            if (blows[i] + blows[i + 1] < blows[least] + blows[least + 1]) {
                least = i;
            }
        }
        return least;
    }

    private void join(int first) {
        energyVariance[first] = joinedVariance(first);
        pulseNm[first] = pulseNm[first + 1];
        energyJ[first] += energyJ[first + 1];
        varianceRad2[first] += varianceRad2[first + 1];
        blows[first] += blows[first + 1];
        size--;
        for (int i = first + 1; i < size; i++) {
            energyJ[i] = energyJ[i + 1];
            energyVariance[i] = energyVariance[i + 1];
            pulseNm[i] = pulseNm[i + 1];
            varianceRad2[i] = varianceRad2[i + 1];
            blows[i] = blows[i + 1];
            startRad[i] = startRad[i + 1];
        }
        startRad[size] = startRad[size + 1];
    }
}
