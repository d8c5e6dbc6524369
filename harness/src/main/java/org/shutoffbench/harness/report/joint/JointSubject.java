package org.shutoffbench.harness.report.joint;

import org.jspecify.annotations.Nullable;
import org.shutoffbench.joint.JointSpecification;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.assembly.Embedding;
import org.shutoffbench.joint.prevailing.LockNutKind;
import org.shutoffbench.joint.strength.AssemblyLimit;
import org.shutoffbench.joint.strength.PropertyClass;

/**
 * What a sheet is about.
 *
 * @param title what the joint is called
 * @param specification the joint in plain numbers
 * @param assembly its bolt, nut and layers; null where only plain numbers are known
 * @param propertyClass class of the bolt; null where none is known
 * @param lockNut kind of lock nut; null for a plain nut
 * @param embedding surfaces and load for the embedding loss
 * @param targetForceN clamp force aimed at, N; NaN for 70 % of yield
 */
public record JointSubject(
        String title,
        JointSpecification specification,
        @Nullable BoltedAssembly assembly,
        @Nullable PropertyClass propertyClass,
        @Nullable LockNutKind lockNut,
        Embedding embedding,
        double targetForceN) {

    private static final double USUAL_UTILISATION = 0.7;

    TorqueTension torqueTension() {
        return specification.torqueTension();
    }

    /** The yield limit of the bolt under combined load; null where no class is known. */
    @Nullable
    AssemblyLimit limit() {
        return propertyClass == null
                ? null
                : new AssemblyLimit(
                        specification.thread(),
                        propertyClass.strength(specification.thread()).yieldPa(),
                        specification.threadFriction());
    }

    /** Clamp force aimed at, N; NaN where neither a target nor a class is known. */
    double aimedForceN() {
        AssemblyLimit limit = limit();
        if (!Double.isNaN(targetForceN) || limit == null) {
            return targetForceN;
        }
        return limit.forceN(USUAL_UTILISATION);
    }
}
