package org.shutoffbench.controller.strategy;

import org.shutoffbench.controller.signal.RingBuffer;

/**
 * Remembers the torque of the last blows over anvil angle and reads what the nut ran on with one turn before it seated.
 */
final class RunningTorque {

    private static final int BLOWS_KEPT = 64;
    private static final float TURN_RAD = (float) (2 * Math.PI);
    private static final float HALF_WIDTH_RAD = TURN_RAD / 4;

    private final RingBuffer anglesRad = new RingBuffer(BLOWS_KEPT);
    private final RingBuffer torquesNm = new RingBuffer(BLOWS_KEPT);

    void reset() {
        anglesRad.clear();
        torquesNm.clear();
    }

    void add(float angleRad, float torqueNm) {
        if (Float.isFinite(angleRad) && Float.isFinite(torqueNm)) {
            anglesRad.add(angleRad);
            torquesNm.add(torqueNm);
        }
    }

    /** Mean torque within a quarter turn of one turn before an angle, N m; 0 where no blow was needed there. */
    float oneTurnBeforeNm(float angleRad) {
        float sum = 0;
        int count = 0;
        for (int age = 0; age < anglesRad.size(); age++) {
            float before = angleRad - anglesRad.get(age);
            if (Math.abs(before - TURN_RAD) <= HALF_WIDTH_RAD) {
                sum += torquesNm.get(age);
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }
}
