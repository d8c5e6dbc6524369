package org.shutoffbench.plant;

import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.tool.ImpactTool;

/**
 * A joint and a tool in motion, stepped from event to event.
 *
 * <p>One cycle is {@link #plan()}, any number of look-ups inside the planned step, then {@link #commit()} or
 * {@link #commitAt(double)}; control goes in exactly between a commit and the next plan. A planned step changes nothing
 * that {@link #state()} shows; look-ups never cut a step. After {@code commitAt(t)} and a copy, original and copy go on
 * identically, bit for bit.
 *
 * <p>All methods but {@link #start} are free of allocation.
 */
public interface Plant {

    /**
     * Starts a tightening from rest: all angles and speeds 0, engaged, nut stuck, drive level 1.
     *
     * @param supplyRatio battery voltage over nominal, in [0.75, 1]
     */
    void start(JointLaw joint, ImpactTool tool, double supplyRatio);

    /** Changes what the electronics do from {@code state().timeS} on; drops any planned step. */
    void command(Drive drive, double level);

    /**
     * Plans the next step from the present state.
     *
     * @return the planned end in s, strictly later than {@code state().timeS}; no event lies before it
     */
    double plan();

    /** Moves to the planned end and handles the event that is due there. */
    void commit();

    /** Moves to a time inside the planned step, {@code state().timeS <= timeS <= planned end}; handles no event. */
    void commitAt(double timeS);

    /** The state as of the last commit. A plant may only work it out when asked, so loops ask for what they need. */
    PlantState state();

    /** Blows so far, as in {@link #state}; quick to have. */
    default int blows() {
        return state().blows;
    }

    /** Whether the bolt is broken, as in {@link #state}; quick to have. */
    default boolean isFractured() {
        return state().fractured;
    }

    /**
     * True once the nut can never turn again under the present command and no further blow can fall: the nut is stuck, the
     * motor puts no energy in, and the energy left in the machine can neither wind the socket up to breakaway nor lift the
     * hammer off. A run-on may end here: nut angle, clamp force and count of blows stay what they are.
     */
    boolean isSettled();

    /** Makes this plant an exact copy of another of the same kind, planned step included. */
    void copyFrom(Plant other);

    // look-ups inside the planned step, state().timeS <= timeS <= planned end

    double carrierAngleRad(double timeS);

    double carrierSpeedRadPerS(double timeS);

    double hammerAngleRad(double timeS);

    double hammerSpeedRadPerS(double timeS);

    double anvilAngleRad(double timeS);

    double anvilSpeedRadPerS(double timeS);

    double nutAngleRad(double timeS);

    double nutSpeedRadPerS(double timeS);

    /** Clamp force F, N. */
    double clampForceN(double timeS);

    /** Motor torque T_m at the carrier, N m. */
    double motorTorqueNm(double timeS);

    /** Torque T_s through the socket, N m. */
    double socketTorqueNm(double timeS);

    /** Lug contact torque T_c, N m. */
    double lugTorqueNm(double timeS);
}
