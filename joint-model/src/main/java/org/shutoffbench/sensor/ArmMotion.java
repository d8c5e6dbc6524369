package org.shutoffbench.sensor;

/**
 * How the housing moves while it is held. What the tool measures against its own housing moves with it.
 *
 * @param yields whether the housing turns back under the motor's torque, by inertia, damping and stiffness of the tool's
 *     housing; false for a tool clamped in a stand
 * @param swayRad root mean square of the arm's slow sway (Ornstein-Uhlenbeck), rad
 * @param swayTimeS correlation time of the sway, s
 */
public record ArmMotion(boolean yields, double swayRad, double swayTimeS) {

    /** The tool is clamped in a stand. */
    public static final ArmMotion NONE = new ArmMotion(false, 0, 1);

    public ArmMotion {
        if (!(swayRad >= 0 && swayRad < Math.PI)) {
            throw new IllegalArgumentException("sway must lie between 0 and pi");
        }
        if (!(swayTimeS > 0 && swayTimeS < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("correlation time of the sway must be positive and finite");
        }
    }

    /** The same arm with its sway multiplied. */
    public ArmMotion withSwayTimes(double factor) {
        return new ArmMotion(yields, swayRad * factor, swayTimeS);
    }

    boolean isNone() {
        return !yields && swayRad == 0;
    }
}
