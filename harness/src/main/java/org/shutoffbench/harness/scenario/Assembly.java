package org.shutoffbench.harness.scenario;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.assembly.Washer;
import org.shutoffbench.joint.stiffness.Layer;
import org.shutoffbench.joint.stiffness.Material;
import org.shutoffbench.joint.stiffness.PartsMethod;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.ScrewThread;

/**
 * How a joint is put together, from which its stiffness follows. What is not given is that of the standard size.
 *
 * @param layers clamped parts from the head on, without washers; empty where the grip tells them
 * @param washers 0, 1 (under the nut) or 2 normal washers
 * @param hole clearance hole of a joint told by its grip; null for the standard one
 * @param boltLength null for the shortest usual one
 * @param method how the clamped parts are counted
 * @param springs gasket, spring washer, soft spacer in series
 */
public record Assembly(
        List<Plate> layers,
        int washers,
        @Nullable Quantity hole,
        @Nullable Quantity boltLength,
        PartsMethod method,
        List<Quantity> springs) {

    public Assembly {
        layers = List.copyOf(layers);
        springs = List.copyOf(springs);
    }

    /**
     * One clamped part.
     *
     * @param material what it is made of
     * @param thickness along the bolt
     * @param width outer diameter, or width of a square plate round the bolt
     * @param hole its clearance hole
     */
    public record Plate(Material material, Quantity thickness, Quantity width, Quantity hole) {

        Layer layer() {
            return Layer.of(material, thickness.si(), width.si(), hole.si());
        }

        String written() {
            return "{material: " + material.title() + ", thickness: " + thickness + ", width: " + width + ", hole: "
                    + hole + "}";
        }
    }

    /**
     * The joint of these parts.
     *
     * @param gripM clamped length, washers included, m; NaN where the layers tell it
     * @throws IllegalArgumentException with the reason, where it cannot be put together
     */
    BoltedAssembly build(ScrewThread screw, PropertyClass propertyClass, double gripM) {
        BoltedAssembly.Builder builder = BoltedAssembly.of(screw, propertyClass)
                .layers(layers.stream().map(Plate::layer).toList())
                .washers(java.util.Collections.nCopies(washers, Washer.normal(screw.majorDiameterM())))
                .method(method);
        if (layers.isEmpty()) {
            builder.grip(gripM);
        }
        if (hole != null) {
            builder.hole(hole.si());
        }
        if (boltLength != null) {
            builder.boltLength(boltLength.si());
        }
        springs.forEach(spring -> builder.spring(spring.si()));
        return builder.build();
    }

    /** Lines of a scenario file, without indent. */
    List<String> lines() {
        java.util.ArrayList<String> lines = new java.util.ArrayList<>();
        if (!layers.isEmpty()) {
            lines.add("layers: " + layers.stream().map(Plate::written).collect(Collectors.joining(", ", "[", "]")));
        }
        lines.add("washers: " + washers);
        if (hole != null) {
            lines.add("hole: " + hole);
        }
        if (boltLength != null) {
            lines.add("bolt_length: " + boltLength);
        }
        lines.add("parts_method: " + method.title());
        if (!springs.isEmpty()) {
            lines.add("springs: " + springs.stream().map(Quantity::text).collect(Collectors.joining(", ", "[", "]")));
        }
        return lines;
    }
}
