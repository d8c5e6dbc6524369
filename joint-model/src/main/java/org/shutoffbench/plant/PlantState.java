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
    /** The lugs press on each other. */
    public boolean inContact;

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
    /** Times the guard against endless events at one instant had to step over them; 0 in a sound run. */
    public int guardSteps;

    /** Everything at rest at time 0: engaged, nut stuck, nothing counted. */
    public void reset() {
        copyFrom(new PlantState());
        engaged = true;
        inContact = true;
    }

    /** Becomes an exact copy. */
    public void copyFrom(PlantState other) {
        timeS = other.timeS;
        carrierAngleRad = other.carrierAngleRad;
        carrierSpeedRadPerS = other.carrierSpeedRadPerS;
        hammerAngleRad = other.hammerAngleRad;
        hammerSpeedRadPerS = other.hammerSpeedRadPerS;
        anvilAngleRad = other.anvilAngleRad;
        anvilSpeedRadPerS = other.anvilSpeedRadPerS;
        nutAngleRad = other.nutAngleRad;
        nutSpeedRadPerS = other.nutSpeedRadPerS;
        plasticAngleRad = other.plasticAngleRad;
        clampForceN = other.clampForceN;
        torqueToMoveNm = other.torqueToMoveNm;
        engaged = other.engaged;
        inContact = other.inContact;
        galled = other.galled;
        yielded = other.yielded;
        fractured = other.fractured;
        nutDirection = other.nutDirection;
        lugsPassed = other.lugsPassed;
        blows = other.blows;
        bounces = other.bounces;
        lastBlowTimeS = other.lastBlowTimeS;
        lastBlowHammerSpeedRadPerS = other.lastBlowHammerSpeedRadPerS;
        guardSteps = other.guardSteps;
    }

    /** A 64-bit hash over every field, equal on every machine for equal bits. */
    public long hash() {
        long h = mix(0x9E3779B97F4A7C15L, timeS);
        h = mix(h, carrierAngleRad);
        h = mix(h, carrierSpeedRadPerS);
        h = mix(h, hammerAngleRad);
        h = mix(h, hammerSpeedRadPerS);
        h = mix(h, anvilAngleRad);
        h = mix(h, anvilSpeedRadPerS);
        h = mix(h, nutAngleRad);
        h = mix(h, nutSpeedRadPerS);
        h = mix(h, plasticAngleRad);
        h = mix(h, clampForceN);
        h = mix(h, torqueToMoveNm);
        h = mix(h, lastBlowTimeS);
        h = mix(h, lastBlowHammerSpeedRadPerS);
        h = mix(
                h,
                (engaged ? 1 : 0) + (galled ? 2 : 0) + (yielded ? 4 : 0) + (fractured ? 8 : 0) + (inContact ? 16 : 0));
        h = mix(h, ((long) nutDirection << 32) + lugsPassed);
        h = mix(h, ((long) blows << 32) + bounces);
        return mix(h, guardSteps);
    }

    private static long mix(long h, double value) {
        return mix(h, Double.doubleToLongBits(value));
    }

    private static long mix(long h, long bits) {
        long z = (h ^ bits) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 29)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 32);
    }
}
