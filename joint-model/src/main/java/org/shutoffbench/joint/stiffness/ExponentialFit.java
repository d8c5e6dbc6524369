package org.shutoffbench.joint.stiffness;

/**
 * Stiffness of clamped parts of one material fitted to finite elements, k = E d A exp(B d/l), after Wileman, Choudhury and
 * Green 1991 (source key {@code Wileman1991}). Valid for washer faces of 1.5 d; aluminium and copper from memory.
 */
public enum ExponentialFit {
    STEEL(0.78715, 0.62873),
    CAST_IRON(0.77871, 0.61616),
    ALUMINIUM(0.79670, 0.63816),
    COPPER(0.79568, 0.63553),
    GENERAL(0.78952, 0.62914);

    private final double factor;
    private final double exponent;

    ExponentialFit(double factor, double exponent) {
        this.factor = factor;
        this.exponent = exponent;
    }

    /**
     * Stiffness of the parts in N/m.
     *
     * @param elasticModulusPa E of the parts, Pa
     * @param diameterM nominal thread diameter d, m
     * @param gripM l, m
     */
    public double stiffnessNPerM(double elasticModulusPa, double diameterM, double gripM) {
        return elasticModulusPa * diameterM * factor * Math.exp(exponent * diameterM / gripM);
    }

    /** The fit for a material of a modulus; general where there is none of its own. */
    public static ExponentialFit of(double elasticModulusPa) {
        if (elasticModulusPa == Material.STEEL.elasticModulusPa()) {
            return STEEL;
        }
        if (elasticModulusPa == Material.CAST_IRON.elasticModulusPa()) {
            return CAST_IRON;
        }
        if (elasticModulusPa == Material.ALUMINIUM.elasticModulusPa()) {
            return ALUMINIUM;
        }
        return elasticModulusPa == Material.COPPER.elasticModulusPa() ? COPPER : GENERAL;
    }
}
