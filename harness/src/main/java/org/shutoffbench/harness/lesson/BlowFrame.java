package org.shutoffbench.harness.lesson;

/**
 * What one blow did, as the page shows it: where the nut came to rest, and where the hammer's energy went.
 *
 * @param blow number, from 1; 0 is the start
 * @param timeS of its first contact, s
 * @param pastSnugDeg nut angle after it, deg past snug (negative before)
 * @param clampForceKn clamp force after it, kN
 * @param clampingNm torque that clamps after it, N m
 * @param resistNm torque to turn the nut on after it, N m
 * @param energyJ kinetic energy of the hammer at first contact, J
 * @param insertJ turned the nut against running and prevailing torque, J
 * @param clampingJ turned the nut against clamp force, friction under it included, J
 * @param spinUp whether the motor ran the nut down after it, so that its work is not the hammer's alone
 */
record BlowFrame(
        int blow,
        double timeS,
        double pastSnugDeg,
        double clampForceKn,
        double clampingNm,
        double resistNm,
        double energyJ,
        double insertJ,
        double clampingJ,
        boolean spinUp) {}
