package org.shutoffbench.harness.run;

import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.scenario.Judgement;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.plant.PlantState;

/**
 * Says what a joint ended as, from the truth.
 *
 * @param quantity what is judged
 * @param target in SI units of the quantity, positive
 * @param low lower edge of the window, same unit; edges count as in window
 * @param high upper edge of the window, same unit
 * @param allowYield whether passing the yield limit is allowed
 */
public record OutcomeRule(JudgedQuantity quantity, double target, double low, double high, boolean allowYield) {

    /** Below this fraction of the target a joint counts as unseated. */
    public static final double UNSEATED_BELOW = 0.10;

    public OutcomeRule {
        if (!(target > 0 && target < Double.POSITIVE_INFINITY) || !(low <= target && target <= high)) {
            throw new IllegalArgumentException("target must be positive and finite, and lie in its window");
        }
    }

    /** The rule that a scenario states. */
    public static OutcomeRule of(Judgement judgement) {
        return new OutcomeRule(
                judgement.quantity(),
                judgement.target().si(),
                judgement.lowest(),
                judgement.highest(),
                judgement.allowYield());
    }

    /** The judged quantity of a joint, SI units. */
    public double value(JointLaw law, PlantState state) {
        return switch (quantity) {
            case CLAMP_FORCE -> state.clampForceN;
            case CLAMPING_TORQUE -> clampingTorqueNm(law, state);
        };
    }

    /** Torque that clamps: kappa_on F, galling included, N m. */
    public static double clampingTorqueNm(JointLaw law, PlantState state) {
        double kappaOnM = state.galled
                ? law.torqueTension()
                        .withThreadFrictionTimes(law.galling().frictionFactor())
                        .kappaOnM()
                : law.torqueTension().kappaOnM();
        return kappaOnM * state.clampForceN;
    }

    /** The first outcome that fits. */
    public Outcome outcome(JointLaw law, PlantState state) {
        if (state.fractured) {
            return Outcome.FRACTURED;
        }
        if (state.yielded && !allowYield) {
            return Outcome.YIELDED;
        }
        double value = value(law, state);
        double pastSnugRad = state.nutAngleRad - law.clamp().snugAngleRad();
        if (pastSnugRad < law.clamp().seatingWidthRad() || value < UNSEATED_BELOW * target) {
            return Outcome.UNSEATED;
        }
        if (value < low) {
            return Outcome.LOW;
        }
        return value > high ? Outcome.HIGH : Outcome.IN_WINDOW;
    }
}
