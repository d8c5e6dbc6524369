package org.shutoffbench.joint.stiffness;

/**
 * Compliance of a stack under a pressure zone that widens from both ends to the middle of the grip and never beyond a
 * layer's own width (sleeve). Each layer counts with its modulus and hole; frusta and sleeves are closed forms.
 *
 * <p>With one material this is the cone of VDI 2230 for a through bolt; at 30 degrees and unlimited width it is the frusta
 * of Shigley (source keys {@code VDI-2230}, {@code Shigley2011}).
 */
final class PressureCone {

    private final LayerStack stack;
    private final double tangent;

    PressureCone(LayerStack stack, double tangent) {
        this.stack = stack;
        this.tangent = tangent;
    }

    double complianceMPerN() {
        double grip = stack.gripM();
        double sum = 0;
        double from = 0;
        for (Layer layer : stack.layers()) {
            double to = from + layer.thicknessM();
            sum += layerCompliance(layer, from, to, grip);
            from = to;
        }
        return sum;
    }

    /** A layer counts from whichever end each of its points is nearer to. */
    private double layerCompliance(Layer layer, double from, double to, double grip) {
        double middle = grip / 2;
        double nearHead = sectionCompliance(layer, Math.min(from, middle), Math.min(to, middle));
        double nearNut = sectionCompliance(layer, grip - Math.max(to, middle), grip - Math.max(from, middle));
        return nearHead + nearNut;
    }

    /** Compliance between two depths below the same bearing face, split where the cone meets the layer's edge. */
    private double sectionCompliance(Layer layer, double from, double to) {
        if (!(from < to)) {
            return 0;
        }
        double full = (layer.outerDiameterM() - stack.bearingFaceM()) / (2 * tangent);
        double edge = Math.min(Math.max(full, from), to);
        return frustum(layer, diameterAt(from), edge - from) + sleeve(layer, to - edge);
    }

    private double diameterAt(double depth) {
        return stack.bearingFaceM() + 2 * depth * tangent;
    }

    private double frustum(Layer layer, double smallDiameter, double height) {
        if (height <= 0) {
            return 0;
        }
        double hole = layer.holeDiameterM();
        double large = smallDiameter + 2 * height * tangent;
        double stretch = Math.PI * layer.elasticModulusPa() * tangent;
        if (hole == 0) {
            return 2 / stretch * (1 / smallDiameter - 1 / large);
        }
        double ratio = (large - hole) * (smallDiameter + hole) / ((large + hole) * (smallDiameter - hole));
        return Math.log(ratio) / (stretch * hole);
    }

    private double sleeve(Layer layer, double height) {
        if (height <= 0) {
            return 0;
        }
        double outer = layer.outerDiameterM();
        double hole = layer.holeDiameterM();
        double area = Math.PI / 4 * (outer - hole) * (outer + hole);
        return height / (layer.elasticModulusPa() * area);
    }
}
