package org.shutoffbench.sensor;

/**
 * What the electronics read at one sample. Owned and overwritten by its {@link SensorChain}. A quantity that is not sampled,
 * or that dropped out at this sample, is NaN ({@link #blows}: 0).
 */
public final class SensorReading {
    public float carrierAngleRad = Float.NaN;
    public float carrierSpeedRadPerS = Float.NaN;
    public float motorCurrentA = Float.NaN;
    public float supplyRatio = Float.NaN;
    public float housingAccelerationMPerS2 = Float.NaN;
    public int blows;
    public float anvilAngleRad = Float.NaN;
    public float housingRateRadPerS = Float.NaN;
    public float torqueNm = Float.NaN;

    void clear() {
        carrierAngleRad = Float.NaN;
        carrierSpeedRadPerS = Float.NaN;
        motorCurrentA = Float.NaN;
        supplyRatio = Float.NaN;
        housingAccelerationMPerS2 = Float.NaN;
        blows = 0;
        anvilAngleRad = Float.NaN;
        housingRateRadPerS = Float.NaN;
        torqueNm = Float.NaN;
    }

    void copyFrom(SensorReading other) {
        carrierAngleRad = other.carrierAngleRad;
        carrierSpeedRadPerS = other.carrierSpeedRadPerS;
        motorCurrentA = other.motorCurrentA;
        supplyRatio = other.supplyRatio;
        housingAccelerationMPerS2 = other.housingAccelerationMPerS2;
        blows = other.blows;
        anvilAngleRad = other.anvilAngleRad;
        housingRateRadPerS = other.housingRateRadPerS;
        torqueNm = other.torqueNm;
    }
}
