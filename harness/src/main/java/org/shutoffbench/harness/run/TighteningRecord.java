package org.shutoffbench.harness.run;

import org.shutoffbench.controller.Verdict;

/**
 * One row of the outcomes: one strategy on one joint. Values are rounded to the decimals of the outcomes file, so that what
 * is counted here and what a reader counts in the file are the same.
 *
 * @param family index of the family in the scenario
 * @param joint joint number within the family, from 0
 * @param strategy index of the strategy in the scenario
 * @param clampForceN truth at judgement, N
 * @param clampingTorqueNm kappa_on F at judgement, N m; running and prevailing torque not counted
 * @param prevailingTorqueNm running and prevailing torque at the final nut angle, N m
 * @param nutAngleDeg final nut angle past snug, deg
 * @param blows all blows, spin-up and run-on included
 * @param timeS time to the stop command, s
 * @param runOnAngleDeg nut angle from the stop command to judgement, deg
 * @param guardSteps events that the plant could not bring in order and stepped over; 0 where its motion is exact
 */
public record TighteningRecord(
        int family,
        int joint,
        int lot,
        int piece,
        int repeat,
        int tool,
        int strategy,
        EndReason endReason,
        Verdict verdict,
        Outcome outcome,
        double clampForceN,
        double clampingTorqueNm,
        double prevailingTorqueNm,
        double nutAngleDeg,
        int blows,
        double timeS,
        double runOnAngleDeg,
        int guardSteps) {

    /** Decimals of clamp force in N. */
    public static final int FORCE_DIGITS = 2;

    /** Decimals of torque in N m and of angle in deg. */
    public static final int TORQUE_AND_ANGLE_DIGITS = 4;

    /** Decimals of time in s. */
    public static final int TIME_DIGITS = 6;

    public TighteningRecord {
        clampForceN = Decimals.round(clampForceN, FORCE_DIGITS);
        clampingTorqueNm = Decimals.round(clampingTorqueNm, TORQUE_AND_ANGLE_DIGITS);
        prevailingTorqueNm = Decimals.round(prevailingTorqueNm, TORQUE_AND_ANGLE_DIGITS);
        nutAngleDeg = Decimals.round(nutAngleDeg, TORQUE_AND_ANGLE_DIGITS);
        timeS = Decimals.round(timeS, TIME_DIGITS);
        runOnAngleDeg = Decimals.round(runOnAngleDeg, TORQUE_AND_ANGLE_DIGITS);
    }
}
