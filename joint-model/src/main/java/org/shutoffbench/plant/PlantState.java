package org.shutoffbench.plant;

/**
 * All that moves, in one flat preallocated struct. Angles in rad from the start, speeds in rad/s, time in s.
 *
 * <p>Written by plants only; everybody else reads.
 */
public final class PlantState {

    public double timeS;
    public double carrierAngleRad;
    public double carrierSpeedRadPerS;
    public double hammerAngleRad;
    public double hammerSpeedRadPerS;
    public double anvilAngleRad;
    public double anvilSpeedRadPerS;
    public double nutAngleRad;
    public double nutSpeedRadPerS;
    public double plasticAngleRad;
    public double clampForceN;
    /** Torque to turn the nut on at its present angle, kinetic, N m. */
    public double torqueToMoveNm;

    public boolean engaged;
    public boolean galled;
    public boolean yielded;
    public boolean fractured;
    /** -1 backing off, 0 stuck, 1 turning on. */
    public int nutDirection;
    /** Lugs passed since the start. */
    public int lugsPassed;
    /** First contacts after a lug passing. */
    public int blows;
    /** Later contacts before the next passing, over the whole run. */
    public int bounces;
    /** Time of the last blow's first contact, s; NaN before the first. */
    public double lastBlowTimeS = Double.NaN;
    /** Hammer speed at the last blow's first contact, rad/s; NaN before the first. */
    public double lastBlowHammerSpeedRadPerS = Double.NaN;
}
