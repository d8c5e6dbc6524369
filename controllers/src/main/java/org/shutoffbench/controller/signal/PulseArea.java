package org.shutoffbench.controller.signal;

/**
 * Area of the first torque pulse of a blow. A low-pass filter changes the height of a pulse but hardly its area, and the
 * anvil's rebound makes pulses of its own, which are passed over. Samples that are not finite are ignored.
 */
public final class PulseArea {

    /** A pulse begins here, N m: five times the noise of a good sensor. */
    private static final float BEGIN_NM = 10;
    /** It ends below this share of its peak, or where it rises again by {@link #RISE} below {@link #LOW} of it. */
    private static final float END = 0.15f;

    private static final float LOW = 0.5f;
    private static final float RISE = 0.1f;
    /** Pulses that follow a first one within this time belong to the same blow, s. */
    private static final float SAME_BLOW_S = 0.01f;

    private final float periodS;
    private final int sameBlow;

    private int since;
    private boolean inside;
    private float sumNm;
    private float peakNm;
    private float lastNm;
    private float areaNms;

    /** @param periodS sampling period, s */
    public PulseArea(float periodS) {
        this.periodS = periodS;
        sameBlow = Math.round(SAME_BLOW_S / periodS);
        reset();
    }

    /** Forgets everything. */
    public void reset() {
        since = sameBlow;
        inside = false;
        sumNm = 0;
        peakNm = 0;
        lastNm = 0;
        areaNms = 0;
    }

    /** Takes one sample, N m. */
    public void update(float torqueNm) {
        since = Math.min(since + 1, sameBlow);
        if (!Float.isFinite(torqueNm)) {
            return;
        }
        if (inside) {
            boolean rises = lastNm < LOW * peakNm && torqueNm > lastNm + RISE * peakNm;
            if (torqueNm < END * peakNm || rises) {
                inside = false;
                areaNms = sumNm * periodS;
            } else {
                sumNm += torqueNm;
                peakNm = Math.max(peakNm, torqueNm);
            }
        } else if (torqueNm >= BEGIN_NM && since >= sameBlow) {
            inside = true;
            since = 0;
            sumNm = torqueNm;
            peakNm = torqueNm;
        }
        lastNm = torqueNm;
    }

    /** Area of the newest blow's pulse, N m s, once; 0 if there was none since the last call. */
    public float take() {
        float area = areaNms;
        areaNms = 0;
        return area;
    }
}
