package org.shutoffbench.joint.stiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.ScrewThread;

class StiffnessPropertyTest {

    private static final ScrewThread M12 = MetricSize.M12.coarse();
    private static final double FACE_M = 16.63e-3;
    private static final double HOLE_M = 13.5e-3;

    @Property
    void aSeriesIsSofterThanEachOfItsParts(
            @ForAll @DoubleRange(min = 1e6, max = 1e10) double bolt,
            @ForAll @DoubleRange(min = 1e6, max = 1e10) double parts,
            @ForAll @Size(max = 3) List<@DoubleRange(min = 1e5, max = 1e10) Double> springs) {
        JointStiffness joint = new JointStiffness(1 / bolt, 1 / parts, springs);
        assertThat(joint.seriesNPerM()).isLessThan(bolt).isLessThan(parts);
        for (double spring : springs) {
            assertThat(joint.seriesNPerM()).isLessThan(spring);
        }
        assertThat(joint.loadFactor()).isBetween(0.0, 1.0);
    }

    @Property
    void oneMoreLayerIsSofter(@ForAll("stacks") List<Layer> layers) {
        List<Layer> more = new ArrayList<>(layers);
        more.add(layers.get(0));
        double before = PartsMethod.FRUSTA.complianceMPerN(new LayerStack(layers, FACE_M), M12);
        assertThat(PartsMethod.FRUSTA.complianceMPerN(new LayerStack(more, FACE_M), M12))
                .isGreaterThan(before);
    }

    /** The cone's angle follows the mean width, so for it the layers are alike. */
    @Property
    void oneMoreLayerOfTheSameKindIsSofter(@ForAll PartsMethod method, @ForAll("layers") Layer layer) {
        double two = method.complianceMPerN(new LayerStack(List.of(layer, layer), FACE_M), M12);
        double three = method.complianceMPerN(new LayerStack(List.of(layer, layer, layer), FACE_M), M12);
        assertThat(three).isGreaterThan(two);
    }

    /** Where a layer is cut into two of the same kind cannot matter. */
    @Property
    void cuttingALayerChangesNothing(
            @ForAll PartsMethod method,
            @ForAll("layers") Layer layer,
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double share) {
        Layer upper = new Layer(
                layer.elasticModulusPa(), share * layer.thicknessM(), layer.outerDiameterM(), layer.holeDiameterM());
        Layer lower = new Layer(
                layer.elasticModulusPa(),
                (1 - share) * layer.thicknessM(),
                layer.outerDiameterM(),
                layer.holeDiameterM());
        double whole = method.complianceMPerN(new LayerStack(List.of(layer), FACE_M), M12);
        double cut = method.complianceMPerN(new LayerStack(List.of(upper, lower), FACE_M), M12);
        assertThat(cut).isCloseTo(whole, within(1e-9 * whole));
    }

    @Property
    void turningTheStackOverChangesNothing(@ForAll("stacks") List<Layer> layers) {
        List<Layer> turned = new ArrayList<>(layers);
        java.util.Collections.reverse(turned);
        for (PartsMethod method : List.of(PartsMethod.VDI_CONE, PartsMethod.FRUSTA)) {
            double before = method.complianceMPerN(new LayerStack(layers, FACE_M), M12);
            double after = method.complianceMPerN(new LayerStack(turned, FACE_M), M12);
            assertThat(after).isCloseTo(before, within(1e-9 * before));
        }
    }

    @Provide
    Arbitrary<Layer> layers() {
        return Combinators.combine(
                        Arbitraries.doubles().between(10e-3, 60e-3).ofScale(6),
                        Arbitraries.doubles().between(17e-3, 120e-3).ofScale(6))
                .as((thickness, width) -> new Layer(205e9, thickness, width, HOLE_M));
    }

    @Provide
    Arbitrary<List<Layer>> stacks() {
        return layers().list().ofMinSize(1).ofMaxSize(4);
    }
}
