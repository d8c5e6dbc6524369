package org.shutoffbench.joint.thread;

/** Exact sizes of inch and pound units in SI (international yard and pound; standard gravity for the pound-force). */
public final class CustomaryUnits {

    public static final double INCH_M = 0.0254;
    public static final double POUND_FORCE_N = 0.45359237 * 9.80665;
    public static final double KIP_N = 1000 * POUND_FORCE_N;
    public static final double PSI_PA = POUND_FORCE_N / (INCH_M * INCH_M);
    public static final double KSI_PA = 1000 * PSI_PA;
    public static final double FOOT_POUND_NM = 12 * INCH_M * POUND_FORCE_N;
    public static final double INCH_POUND_NM = INCH_M * POUND_FORCE_N;

    private CustomaryUnits() {}
}
