package org.shutoffbench.harness.cli;

import java.util.List;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.joint.stiffness.Layer;
import org.shutoffbench.joint.stiffness.Material;
import org.shutoffbench.joint.thread.HexDimensions;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;

/** Reads clamped layers such as {@code steel:20mm:50mm:13.5mm}. */
final class LayerOption {

    private static final String OPTION = "--layer";
    private static final double WIDTH_PER_BEARING_FACE = 3;

    private LayerOption() {}

    static List<Layer> read(List<String> texts, ScrewThread thread) {
        HexDimensions hexagon = ThreadDesignation.hexagonOf(thread)
                .orElseThrow(() -> new InputException("no standard bolt of thread " + thread.designation()));
        return texts.stream().map(text -> layer(text, hexagon)).toList();
    }

    private static Layer layer(String text, HexDimensions hexagon) {
        List<String> parts = List.of(text.split(":", -1));
        if (parts.size() < 2 || parts.size() > 4) {
            throw new InputException(
                    OPTION + " " + text + ": write material:thickness, then width and hole if they matter,"
                            + " such as steel:20mm:50mm:13.5mm");
        }
        double thickness = JointSizes.si(OPTION, parts.get(1), Dimension.LENGTH);
        double width = parts.size() > 2
                ? JointSizes.si(OPTION, parts.get(2), Dimension.LENGTH)
                : WIDTH_PER_BEARING_FACE * hexagon.bearingFaceM();
        double hole =
                parts.size() > 3 ? JointSizes.si(OPTION, parts.get(3), Dimension.LENGTH) : hexagon.clearanceHoleM();
        return Layer.of(Material.named(parts.get(0)), thickness, width, hole);
    }
}
