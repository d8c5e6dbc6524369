package org.shutoffbench.joint.stiffness;

import java.util.List;
import java.util.Locale;

/**
 * The clamped parts between head and nut, washers included, from the head on.
 *
 * @param layers at least one
 * @param bearingFaceM d_w, outer diameter of the faces of head and nut, m; larger than the hole they press on
 */
public record LayerStack(List<Layer> layers, double bearingFaceM) {

    public LayerStack {
        layers = List.copyOf(layers);
        if (layers.isEmpty()) {
            throw new IllegalArgumentException("a joint needs at least one clamped layer");
        }
        if (!(bearingFaceM > 0 && bearingFaceM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("bearing face diameter must be positive and finite");
        }
        for (Layer end : List.of(layers.get(0), layers.get(layers.size() - 1))) {
            if (!(end.holeDiameterM() < bearingFaceM)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "hole of %.4g mm is larger than the bearing face of head or nut, %.4g mm",
                        end.holeDiameterM() * 1e3,
                        bearingFaceM * 1e3));
            }
        }
    }

    /** Clamped length l_K, m. */
    public double gripM() {
        return layers.stream().mapToDouble(Layer::thicknessM).sum();
    }

    /** Outer diameter of the parts, mean over their thickness, m; infinite where a layer is much wider than its cone. */
    public double meanOuterDiameterM() {
        return layers.stream()
                        .mapToDouble(l -> l.thicknessM() * l.outerDiameterM())
                        .sum()
                / gripM();
    }

    /** Whether all layers have one modulus and one hole. */
    public boolean isUniform() {
        Layer first = layers.get(0);
        return layers.stream()
                .allMatch(l ->
                        l.elasticModulusPa() == first.elasticModulusPa() && l.holeDiameterM() == first.holeDiameterM());
    }
}
