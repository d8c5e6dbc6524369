package org.shutoffbench.controller;

/**
 * One sample of every channel. Owned and reused by the caller; a strategy reads it within {@code onSample} and keeps no
 * reference. A channel that the tool lacks, or that dropped out at this sample, is NaN ({@link #blows}: 0).
 */
public final class SensorFrame {
    public float carrierAngleRad = Float.NaN;
    public float carrierSpeedRadPerS = Float.NaN;
    public float motorCurrentA = Float.NaN;
    public float supplyRatio = Float.NaN;
    public float housingAccelerationMPerS2 = Float.NaN;
    public int blows;
    public float anvilAngleRad = Float.NaN;
    public float housingRateRadPerS = Float.NaN;
    public float torqueNm = Float.NaN;
}
