package org.shutoffbench.controller;

/**
 * What the tool is set to.
 *
 * @param clampingTorqueNm torque that clamps, running and prevailing torque not counted, N m; not negative (0 is allowed
 *     and must lead to an early stop)
 * @param windowFraction half width of the acceptance window over the target
 */
public record Target(float clampingTorqueNm, float windowFraction) {

    public Target {
        if (!(clampingTorqueNm >= 0 && clampingTorqueNm < Float.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("target torque must be finite and not negative");
        }
        if (!(windowFraction > 0 && windowFraction < 1)) {
            throw new IllegalArgumentException("window must lie between 0 and 1");
        }
    }
}
