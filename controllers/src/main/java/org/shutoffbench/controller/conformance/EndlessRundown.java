package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.SensorFrame;

/** A nut that spins freely for half a minute: no blow, no torque, nothing to stop for but the time. */
final class EndlessRundown implements Recording {

    private static final float SPEED_RAD_PER_S = 150f;

    @Override
    public int ticks() {
        return 30 * Subject.RATE_HZ;
    }

    @Override
    public String title() {
        return "a made-up rundown without end";
    }

    @Override
    public void sample(int tick, SensorFrame frame) {
        float time = tick / (float) Subject.RATE_HZ;
        float speed = SPEED_RAD_PER_S * Math.min(1f, time / 0.05f);
        float ripple = Hash.of(tick, 11) / (float) (1 << 30) - 1f;
        frame.carrierAngleRad = speed * time;
        frame.carrierSpeedRadPerS = speed + ripple;
        frame.motorCurrentA = 3f + ripple;
        frame.supplyRatio = 0.97f;
        frame.housingAccelerationMPerS2 = 3f * ripple;
        frame.blows = 0;
        frame.anvilAngleRad = speed * time + 0.008f * ripple;
        frame.housingRateRadPerS = 0.1f * ripple;
        frame.torqueNm = 0.2f + 2f * ripple;
    }
}
