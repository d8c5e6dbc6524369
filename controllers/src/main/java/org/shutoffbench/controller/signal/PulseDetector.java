package org.shutoffbench.controller.signal;

/**
 * Finds torque pulses at the anvil and their peaks. A pulse begins when torque rises over a floor and ends when it has
 * stayed below half of it for some milliseconds, so that rebounds of one blow make one pulse.
 */
public final class PulseDetector {

    /** Far above the noise of a torque sensor of 2 N m and of the knocks while a nut runs free, below every blow, N m. */
    public static final float USUAL_FLOOR_NM = 20f;

    private static final float QUIET_S = 3e-3f;

    private final float floorNm;
    private final int quietSamples;
    private boolean inPulse;
    private int quiet;
    private float peakNm;
    private float lastPeakNm;
    private boolean began;
    private boolean ended;

    /**
     * @param floorNm torque that begins a pulse, N m; above the noise
     * @param sampleRateHz samples per second
     */
    public PulseDetector(float floorNm, int sampleRateHz) {
        if (!(floorNm > 0)) {
            throw new IllegalArgumentException("the floor must be positive");
        }
        this.floorNm = floorNm;
        this.quietSamples = Samples.in(QUIET_S, sampleRateHz, 1);
    }

    public void reset() {
        inPulse = false;
        quiet = 0;
        peakNm = 0;
        lastPeakNm = Float.NaN;
        began = false;
        ended = false;
    }

    /** Takes a sample of torque, N m; one that is not finite counts as no torque. */
    public void update(float torqueNm) {
        float torque = Float.isFinite(torqueNm) ? torqueNm : 0;
        began = !inPulse && torque > floorNm;
        ended = false;
        if (began) {
            inPulse = true;
            peakNm = torque;
            quiet = 0;
        } else if (inPulse) {
            peakNm = Math.max(peakNm, torque);
            quiet = torque < floorNm / 2 ? quiet + 1 : 0;
            if (quiet >= quietSamples) {
                inPulse = false;
                ended = true;
                lastPeakNm = peakNm;
            }
        }
    }

    /** True at the sample where a pulse begins. */
    public boolean began() {
        return began;
    }

    /** True at the sample where a pulse has ended. */
    public boolean ended() {
        return ended;
    }

    /** Peak of the last ended pulse, N m; NaN before the first. */
    public float lastPeakNm() {
        return lastPeakNm;
    }
}
