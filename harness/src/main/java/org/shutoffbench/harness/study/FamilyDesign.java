package org.shutoffbench.harness.study;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.statistics.ExactSample;
import org.shutoffbench.harness.statistics.VarianceComponents;

/** Which lot and piece the first joints of a family belong to: what variance components need. */
final class FamilyDesign {

    private static final int ABSENT = -1;

    private final Family family;
    private final int[] lots = new int[ExactSample.KEPT];
    private final int[] pieces = new int[ExactSample.KEPT];

    FamilyDesign(Family family) {
        this.family = family;
        Arrays.fill(lots, ABSENT);
    }

    void add(TighteningRecord tightening) {
        if (tightening.joint() < lots.length) {
            lots[tightening.joint()] = tightening.lot();
            pieces[tightening.joint()] = tightening.piece();
        }
    }

    void merge(FamilyDesign other) {
        for (int joint = 0; joint < lots.length; joint++) {
            if (other.lots[joint] != ABSENT) {
                lots[joint] = other.lots[joint];
                pieces[joint] = other.pieces[joint];
            }
        }
    }

    /** Components of a cell's kept values; null where each joint is its own lot and is tightened once. */
    QuantitySummary.@Nullable Variance components(double[] valuesByJoint) {
        if (family.lots() == family.joints() && family.repeats() == 1) {
            return null;
        }
        int n = 0;
        double[] values = new double[valuesByJoint.length];
        int[] lotOf = new int[valuesByJoint.length];
        int[] pieceOf = new int[valuesByJoint.length];
        for (int joint = 0; joint < valuesByJoint.length; joint++) {
            if (!Double.isNaN(valuesByJoint[joint])) {
                values[n] = valuesByJoint[joint];
                lotOf[n] = lots[joint];
                pieceOf[n] = pieces[joint];
                n++;
            }
        }
        VarianceComponents components =
                VarianceComponents.of(Arrays.copyOf(values, n), Arrays.copyOf(lotOf, n), Arrays.copyOf(pieceOf, n));
        if (Double.isNaN(components.repeat())) {
            return null;
        }
        return new QuantitySummary.Variance(
                QuantityReport.finite(components.lot()),
                QuantityReport.finite(components.piece()),
                components.repeat());
    }
}
