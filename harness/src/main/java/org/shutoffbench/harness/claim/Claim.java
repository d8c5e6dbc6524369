package org.shutoffbench.harness.claim;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.JudgedQuantity;
import org.shutoffbench.harness.statistics.RiskPoint;

/**
 * What a seller promises, complete enough to be tested.
 *
 * @param name of the claim
 * @param quantity clamping torque or clamp force
 * @param target in SI
 * @param lowest lower edge of the tolerance, in SI; inside
 * @param highest upper edge, in SI; inside
 * @param coverage share of joints that do not fail, in (0, 1)
 * @param index the index that was claimed instead of a share; null where a share was
 * @param confidence that the buyer wants before believing it, in (0, 1)
 * @param population of what it is claimed
 * @param failure which joints count against it
 * @param seller failing share at which the seller wants to be accepted, and the risk of not being; null where not stated
 * @param secondsPerJoint time for trying one joint, s; null where not stated
 * @param gauge what measures; null where not stated
 * @param measured how a file of measurements is laid out; null where not stated
 */
public record Claim(
        String name,
        JudgedQuantity quantity,
        double target,
        double lowest,
        double highest,
        double coverage,
        @Nullable Double index,
        double confidence,
        Population population,
        FailureRule failure,
        @Nullable RiskPoint seller,
        @Nullable Double secondsPerJoint,
        @Nullable Gauge gauge,
        @Nullable MeasuredColumns measured) {

    /**
     * Of which joints it is claimed.
     *
     * @param families by name; empty for any joint
     * @param lots that a delivery holds; 0 for any number
     * @param tools 0 for any tool
     * @param batteryFrom least supply over nominal
     * @param batteryTo greatest supply over nominal
     */
    public record Population(List<String> families, int lots, int tools, double batteryFrom, double batteryTo) {

        public Population {
            families = List.copyOf(families);
        }

        boolean anyFamily() {
            return families.isEmpty();
        }
    }

    /**
     * What measures the joints.
     *
     * @param expandedUncertainty half width U of the interval round a reading, in SI
     * @param coverageFactor k of U
     * @param repeatability standard deviation of repeated readings of one joint, in SI; null where not stated
     */
    public record Gauge(
            double expandedUncertainty,
            double coverageFactor,
            @Nullable Double repeatability) {}

    /**
     * How a file of measurements is laid out.
     *
     * @param value column of the quantity
     * @param unit of every value in it
     * @param joint column that names the joint
     * @param lot column of the lot; null where there is none
     * @param family column of the family of joints; null where there is none
     * @param reading column that numbers repeated readings of one joint; null where each was read once
     * @param calledDone column that says yes or no; null where there is none
     */
    public record MeasuredColumns(
            String value,
            String unit,
            String joint,
            @Nullable String lot,
            @Nullable String family,
            @Nullable String reading,
            @Nullable String calledDone) {

        /** Columns that the file must have. */
        List<String> named() {
            return Stream.of(value, joint, lot, family, reading, calledDone)
                    .filter(Objects::nonNull)
                    .toList();
        }
    }

    /** Share of joints that must not be reached: 1 - coverage. */
    public double allowed() {
        return 1 - coverage;
    }

    /** The buyer's point: the allowed share, accepted with at most 1 - confidence. */
    public RiskPoint buyer() {
        return new RiskPoint(allowed(), 1 - confidence);
    }

    boolean fails(double value, boolean calledDone) {
        return failure.fails(value, calledDone, lowest, highest);
    }
}
