package org.shutoffbench.joint.stiffness;

import java.util.List;

/**
 * Springs of a joint in series.
 *
 * @param boltComplianceMPerN delta_S, m/N; positive
 * @param partsComplianceMPerN delta_P, m/N; positive
 * @param springsNPerM stiffness of gasket, spring washer, soft spacer and the like, N/m; each positive
 */
public record JointStiffness(double boltComplianceMPerN, double partsComplianceMPerN, List<Double> springsNPerM) {

    public JointStiffness {
        springsNPerM = List.copyOf(springsNPerM);
        if (!(boltComplianceMPerN > 0 && boltComplianceMPerN < Double.POSITIVE_INFINITY)
                || !(partsComplianceMPerN > 0 && partsComplianceMPerN < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("compliances of bolt and parts must be positive and finite");
        }
        if (!springsNPerM.stream().allMatch(k -> k > 0)) {
            throw new IllegalArgumentException("springs in series must be positive");
        }
    }

    /** k_J = 1/(delta_S + delta_P + springs), N/m. */
    public double seriesNPerM() {
        return 1 / (boltComplianceMPerN + clampedComplianceMPerN());
    }

    /** Share of an outside axial load that the bolt feels, Phi = C = delta_P/(delta_S + delta_P). */
    public double loadFactor() {
        return clampedComplianceMPerN() * seriesNPerM();
    }

    private double clampedComplianceMPerN() {
        return partsComplianceMPerN
                + springsNPerM.stream().mapToDouble(k -> 1 / k).sum();
    }
}
