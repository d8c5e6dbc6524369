package org.shutoffbench.controller.strategy.adaptive;

import java.util.Arrays;

/**
 * Turns samples into blows: where the nut rested before, where it rests after, and how fast the carrier was.
 *
 * <p>The arm sways like a random walk over a few milliseconds and every sample carries white noise; the best rest angle
 * right before or after an instant is then an exponential average away from it with time constant sqrt(r/q), r the density
 * of the noise and q the diffusion of the sway. A report of the blow detector comes up to 2 ms late; the contact itself is
 * where the angle steps.
 */
final class BlowObserver {

    private static final int RING = 128;
    private static final int MASK = RING - 1;
    /** Samples on each side of a tried instant that are compared to find the step. */
    private static final int SIDE = 8;
    /** The contact lies at most this many samples before its report. */
    private static final int REACH = 24;

    /** Two reports closer than this are one blow, s. */
    private static final float SAME_BLOW_S = 0.010f;
    /** Samples this close before the contact may already belong to the step, s. */
    private static final float BEFORE_S = 0.0003f;
    /** The nut moves this long, s. */
    private static final float MOVING_S = 0.0009f;
    /** The blow is complete this long after contact, s: early enough to prevent the next. */
    private static final float SETTLED_S = 0.0036f;
    /** The carrier keeps its speed this long after contact, s. */
    private static final float HEARD_S = 0.0035f;

    private static final float AVERAGE_S = 0.0015f;
    /** A nut that turns more than this over {@link #REST_SPAN_S} is not at rest, rad. */
    private static final float AT_REST_RAD = 0.05f;

    private static final float REST_SPAN_S = 0.003f;

    private final int sameBlow;
    private final int before;
    private final int moving;
    private final int settled;
    private final int heard;
    private final int restSpan;
    private final float keep;

    private final float[] angles = new float[RING];
    private final float[] averages = new float[RING];
    private final float[] speedSums = new float[RING];

    private int tick;
    private int reportTick;
    private int contactTick;
    private boolean locating;
    private boolean settling;
    private float average;
    private float smoothedSpeed;
    private float speedSum;
    private float weight;
    private float weightSum;
    private float angleSum;

    /** Rest angle before the last blow, rad. */
    float restBeforeRad;
    /** Rest angle after it, rad. */
    float restAfterRad;
    /** Whether the nut was at rest before it. */
    boolean wasAtRest;
    /** Mean carrier speed since the blow before, rad/s. */
    float meanSpeedRadPerS;
    /** Carrier speed at contact, rad/s. */
    float contactSpeedRadPerS;
    /** Samples since the blow before, or since the start. */
    int period;
    /** Highest smoothed carrier speed so far, rad/s. */
    float highestSpeedRadPerS;

    BlowObserver(float periodS) {
        sameBlow = Math.round(SAME_BLOW_S / periodS);
        before = Math.round(BEFORE_S / periodS);
        moving = Math.round(MOVING_S / periodS);
        settled = Math.round(SETTLED_S / periodS);
        heard = Math.round(HEARD_S / periodS);
        restSpan = Math.round(REST_SPAN_S / periodS);
        keep = Math.max(0, 1 - periodS / AVERAGE_S);
    }

    void reset() {
        Arrays.fill(angles, 0);
        Arrays.fill(averages, 0);
        Arrays.fill(speedSums, 0);
        tick = 0;
        reportTick = 0;
        contactTick = 0;
        locating = false;
        settling = false;
        average = 0;
        smoothedSpeed = 0;
        speedSum = 0;
        weight = 0;
        weightSum = 0;
        angleSum = 0;
        restBeforeRad = 0;
        restAfterRad = 0;
        wasAtRest = false;
        meanSpeedRadPerS = 0;
        contactSpeedRadPerS = 0;
        period = 0;
        highestSpeedRadPerS = 0;
    }

    /** Takes one sample; true when a blow is complete. */
    boolean observe(float angleRad, float speedRadPerS, int reports) {
        tick++;
        average = tick == 1 ? angleRad : keep * average + (1 - keep) * angleRad;
        smoothedSpeed += (1 - keep) * (speedRadPerS - smoothedSpeed);
        if (smoothedSpeed > highestSpeedRadPerS) {
            highestSpeedRadPerS = smoothedSpeed;
        }
        speedSum += speedRadPerS;
        int slot = tick & MASK;
        angles[slot] = angleRad;
        averages[slot] = average;
        speedSums[slot] = speedSum;
        if (settling) {
            return settle(angleRad);
        }
        if (locating) {
            if (tick - reportTick >= SIDE) {
                locate();
            }
        } else if (reports > 0 && tick - contactTick > sameBlow) {
            reportTick = tick;
            locating = true;
        }
        return false;
    }

    /** Samples since the last blow's contact. */
    int sinceContact() {
        return tick - contactTick;
    }

    private void locate() {
        locating = false;
        int contact = steepestStep();
        restBeforeRad = averages[(contact - before) & MASK];
        wasAtRest = Math.abs(restBeforeRad - averages[(contact - before - restSpan) & MASK]) < AT_REST_RAD;
        period = contact - contactTick;
        contactTick = contact;
        meanSpeedRadPerS = speedSums[contact & MASK] / period;
        speedSum -= speedSums[contact & MASK];
        settling = true;
        weight = 1;
        weightSum = 0;
        angleSum = 0;
        for (int at = contact + moving + 1; at <= tick; at++) {
            average(angles[at & MASK]);
        }
    }

    /** The sample after which the angle steps most, from the report backwards. */
    private int steepestStep() {
        int newest = tick - SIDE;
        float step = 0;
        for (int i = 1; i <= SIDE; i++) {
            step += angles[(newest + i) & MASK] - angles[(newest + 1 - i) & MASK];
        }
        float steepest = step;
        int found = newest;
        int oldest = Math.max(contactTick + sameBlow, reportTick - REACH);
        for (int at = newest - 1; at >= oldest; at--) {
            step += 2 * angles[(at + 1) & MASK] - angles[(at + 1 + SIDE) & MASK] - angles[(at + 1 - SIDE) & MASK];
            if (step > steepest) {
                steepest = step;
                found = at;
            }
        }
        return found;
    }

    private boolean settle(float angleRad) {
        int after = tick - contactTick;
        if (after > moving) {
            average(angleRad);
        }
        if (after == heard) {
            contactSpeedRadPerS = speedSum / heard;
        }
        if (after < settled) {
            return false;
        }
        settling = false;
        restAfterRad = angleSum / weightSum;
        return true;
    }

    private void average(float angleRad) {
        weightSum += weight;
        angleSum += weight * angleRad;
        weight *= keep;
    }
}
