package org.shutoffbench.harness.audit;

import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.Yielding;

/**
 * What a hand feels when it moves a tightened nut on: it breaks away, and turns a little before the hand stops.
 *
 * @param restingForceN clamp force after settling, before the hand touches the joint, N
 * @param breakawayNm torque at which the rested nut starts, N m
 * @param stoppingNm torque that moves the nut where the hand stops, N m
 */
public record FirstMovement(double restingForceN, double breakawayNm, double stoppingNm) {

    private static final double FIRST_MINUTE_S = 60;

    /**
     * A tightened joint.
     *
     * @param law the joint
     * @param kappaOnM torque per clamp force with which it was tightened, galling included, m
     * @param clampForceN clamp force when it was judged, N
     * @param nutAngleRad nut angle then, from where the tool started, rad
     */
    public record Tightened(JointLaw law, double kappaOnM, double clampForceN, double nutAngleRad) {}

    /**
     * What happens before the audit.
     *
     * @param embeddingM what surfaces settle, f_Z, m
     * @param relaxation share of the force lost per tenfold of time after the first minute
     * @param delayS time from tightening to audit, s
     */
    public record Rest(double embeddingM, double relaxation, double delayS) {}

    /**
     * Moves a nut.
     *
     * @param stiction factor on the joint's own static ratio after rest
     * @param overshootRad nut angle that the hand turns on, rad; not negative
     */
    public static FirstMovement of(Tightened joint, Rest rest, double stiction, double overshootRad) {
        JointLaw law = joint.law();
        double restingN = restingForceN(joint, rest);
        double slidingNm = law.freeTorque().torqueNm(joint.nutAngleRad()) + joint.kappaOnM() * restingN;
        double breakawayNm = Math.max(1, law.staticRatio() * stiction) * slidingNm;
        double stopRad = joint.nutAngleRad() + overshootRad;
        double stoppingNm =
                law.freeTorque().torqueNm(stopRad) + joint.kappaOnM() * forceAfterN(joint, restingN, overshootRad);
        return new FirstMovement(restingN, breakawayNm, stoppingNm);
    }

    /** What a hand tool that keeps its peak sees, N m. */
    public double peakNm() {
        return Math.max(breakawayNm, stoppingNm);
    }

    /** (F - f_Z k_J)(1 - rho lg(t / 1 min)), not below 0. */
    private static double restingForceN(Tightened joint, Rest rest) {
        double stiffnessNPerM = joint.law().clamp().forcePerAngleNPerRad()
                / joint.law().torqueTension().helixLeverM();
        double settledN = Math.max(0, joint.clampForceN() - rest.embeddingM() * stiffnessNPerM);
        double decades = Math.max(0, StrictMath.log10(rest.delayS() / FIRST_MINUTE_S));
        return settledN * Math.max(0, 1 - rest.relaxation() * decades);
    }

    private static double forceAfterN(Tightened joint, double restingN, double overshootRad) {
        ClampLaw clamp = joint.law().clamp();
        double pastSnugRad = restingN > 0
                ? clamp.angleForForceRad(restingN)
                : Math.min(0, joint.nutAngleRad() - clamp.snugAngleRad());
        double elasticN = clamp.forceN(pastSnugRad + overshootRad);
        Yielding yielding = joint.law().yielding();
        double yieldN = Math.max(yielding.yieldForceN(), joint.clampForceN());
        return elasticN <= yieldN ? elasticN : yieldN + yielding.slopeRatio() * (elasticN - yieldN);
    }
}
