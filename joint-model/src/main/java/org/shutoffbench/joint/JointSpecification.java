package org.shutoffbench.joint;

import java.util.List;
import java.util.Locale;
import org.shutoffbench.joint.thread.ScrewThread;

/**
 * One joint in plain numbers, every draw made; {@link #law()} turns it into what the plant runs on, or refuses it with the
 * reason. Stiffness and bearing diameter of standard sizes come from {@link org.shutoffbench.joint.assembly.BoltedAssembly}.
 *
 * @param thread the thread
 * @param bearingDiameterM effective bearing diameter D_b, m; positive
 * @param threadFriction mu_th; not negative
 * @param bearingFriction mu_b; not negative
 * @param stiffnessNPerM k_J of bolt and parts in series, N/m; positive
 * @param seatingWidthRad x_a, rad; not negative
 * @param snugAngleRad nut angle from the start of the tool to snug, rad
 * @param runningTorqueNm T_run, N m; not negative
 * @param staticRatio s, at least 1
 * @param yieldLimit where the bolt yields
 * @param resistances prevailing torque and disturbances
 * @param galling a step of thread friction, or none
 */
public record JointSpecification(
        ScrewThread thread,
        double bearingDiameterM,
        double threadFriction,
        double bearingFriction,
        double stiffnessNPerM,
        double seatingWidthRad,
        double snugAngleRad,
        double runningTorqueNm,
        double staticRatio,
        YieldLimit yieldLimit,
        List<Resistance> resistances,
        Galling galling) {

    /** Breakaway torque over moving torque (assumed). */
    public static final double ASSUMED_STATIC_RATIO = 1.05;

    public JointSpecification {
        resistances = List.copyOf(resistances);
        if (!(bearingDiameterM > 0 && bearingDiameterM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("effective bearing diameter must be positive and finite");
        }
        if (!(threadFriction >= 0 && threadFriction < Double.POSITIVE_INFINITY)
                || !(bearingFriction >= 0 && bearingFriction < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("friction coefficients must be finite and not negative");
        }
        if (!(stiffnessNPerM > 0 && stiffnessNPerM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("joint stiffness must be positive and finite");
        }
    }

    /** Torque per clamp force before any galling. */
    public TorqueTension torqueTension() {
        return TorqueTension.of(
                thread.pitchM(), thread.pitchDiameterM(), bearingDiameterM, threadFriction, bearingFriction);
    }

    /** k_F = k_J P/(2 pi), clamp force per nut angle, N/rad. */
    public double forcePerAngleNPerRad() {
        return stiffnessNPerM * thread.pitchM() / (2 * Math.PI);
    }

    /** K = kappa_on/d. */
    public double nutFactor() {
        return torqueTension().kappaOnM() / thread.majorDiameterM();
    }

    /**
     * The law of this joint.
     *
     * @throws IllegalArgumentException with the reason, where no such joint can be tightened
     */
    public JointLaw law() {
        Yielding yielding = yieldLimit.yielding(thread, threadFriction);
        List<FreeTorque.Piece> pieces = resistances.stream()
                .flatMap(r -> r.pieces(snugAngleRad).stream())
                .toList();
        JointLaw law = new JointLaw(
                torqueTension(),
                new ClampLaw(forcePerAngleNPerRad(), snugAngleRad, seatingWidthRad),
                FreeTorque.of(runningTorqueNm, pieces),
                staticRatio,
                yielding,
                galling);
        requireTurnable(yielding);
        return law;
    }

    private void requireTurnable(Yielding yielding) {
        double peakNm =
                resistances.stream().mapToDouble(r -> r.peakNm(snugAngleRad)).sum() + runningTorqueNm;
        double yieldTorqueNm = torqueTension().kappaOnM() * yielding.yieldForceN();
        if (peakNm >= yieldTorqueNm) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "running and prevailing torque of %.4g N m reach the yield torque of %.4g N m: "
                            + "the bolt would yield on the way",
                    peakNm,
                    yieldTorqueNm));
        }
    }
}
