package org.shutoffbench.joint.stiffness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.ScrewThread;

class StiffnessAnalyticTest {

    private static final ScrewThread M12 = MetricSize.M12.coarse();

    /** Parts no wider than the face are a plain sleeve: l/(E A). */
    @Test
    void aNarrowPartIsASleeve() {
        Layer sleeve = Layer.of(Material.STEEL, 50e-3, 16e-3, 13e-3);
        double area = Math.PI / 4 * (16e-3 * 16e-3 - 13e-3 * 13e-3);
        for (PartsMethod method : List.of(PartsMethod.VDI_CONE, PartsMethod.FRUSTA)) {
            assertThat(method.complianceMPerN(new LayerStack(List.of(sleeve), 16e-3), M12))
                    .isCloseTo(50e-3 / (205e9 * area), within(1e-20));
        }
    }

    /** VDI 2230: from the limit diameter on a wider part adds stiffness by its cone angle alone; below it a sleeve stays. */
    @Test
    void coneAndSleeveMeetAtTheLimitDiameter() {
        double face = 16.63e-3;
        double hole = 13.5e-3;
        double grip = 60e-3;
        double width = 30e-3;
        double tangent = 0.362 + 0.032 * Math.log(grip / (2 * face)) + 0.153 * Math.log(width / face);
        double coneHeight = (width - face) / tangent / 2;
        double cones = 2
                * Math.log((width - hole) * (face + hole) / ((width + hole) * (face - hole)))
                / (Math.PI * 205e9 * hole * tangent);
        double sleeve = (grip - 2 * coneHeight) / (205e9 * Math.PI / 4 * (width * width - hole * hole));
        LayerStack stack = new LayerStack(List.of(Layer.of(Material.STEEL, grip, width, hole)), face);
        assertThat(PartsMethod.VDI_CONE.complianceMPerN(stack, M12)).isCloseTo(cones + sleeve, within(1e-18));
        assertThat(PartsMethod.coneTangent(stack)).isCloseTo(tangent, within(1e-15));
    }

    /** A cone without a hole is the limit of cones with ever smaller holes. */
    @Test
    void theSolidConeIsTheLimitOfASmallHole() {
        LayerStack solid = new LayerStack(List.of(new Layer(1e11, 0.03, 1, 0)), 0.02);
        LayerStack pricked = new LayerStack(List.of(new Layer(1e11, 0.03, 1, 1e-6)), 0.02);
        double compliance = PartsMethod.FRUSTA.complianceMPerN(solid, M12);
        assertThat(PartsMethod.FRUSTA.complianceMPerN(pricked, M12)).isCloseTo(compliance, within(1e-8 * compliance));
        double tangent = Math.tan(Math.PI / 6);
        double edge = 0.02 + 0.03 * tangent;
        assertThat(compliance).isCloseTo(4 / (Math.PI * 1e11 * tangent) * (1 / 0.02 - 1 / edge), within(1e-20));
    }

    /** VDI 2230 lengths for head, engaged thread and nut: 0.5 d, 0.5 d, 0.4 d. */
    @Test
    void theBoltIsARowOfSprings() {
        Bolt bolt = new Bolt(M12, 205e9, 40e-3, 20e-3);
        double shank = Math.PI / 4 * 144e-6;
        double root = Math.PI / 4 * Math.pow(12e-3 - 1.226869 * 1.75e-3, 2);
        List<Bolt.Element> e = bolt.elements();
        assertThat(e.stream().map(Bolt.Element::name))
                .containsExactly("head", "shank", "free thread", "engaged thread", "nut");
        double[] lengths = {6e-3, 40e-3, 20e-3, 6e-3, 4.8e-3};
        double[] areas = {shank, shank, root, root, shank};
        double sum = 0;
        for (int i = 0; i < lengths.length; i++) {
            double expected = lengths[i] / (205e9 * areas[i]);
            sum += expected;
            assertThat(e.get(i).complianceMPerN()).isCloseTo(expected, within(1e-6 * expected));
        }
        assertThat(bolt.complianceMPerN()).isCloseTo(sum, within(1e-6 * sum));
    }

    @Test
    void springsAddUpByTheirInverse() {
        JointStiffness joint = new JointStiffness(1 / 300e6, 1 / 600e6, List.of(400e6, 1200e6));
        assertThat(joint.seriesNPerM()).isCloseTo(1 / (1 / 300e6 + 1 / 600e6 + 1 / 400e6 + 1 / 1200e6), within(1e-6));
        assertThat(joint.loadFactor()).isCloseTo((2.0 + 3 + 1) / (4 + 2 + 3 + 1), within(1e-12));
    }

    @Test
    void eachMaterialHasItsOwnFit() {
        assertThat(ExponentialFit.of(Material.STEEL.elasticModulusPa())).isEqualTo(ExponentialFit.STEEL);
        assertThat(ExponentialFit.of(Material.CAST_IRON.elasticModulusPa())).isEqualTo(ExponentialFit.CAST_IRON);
        assertThat(ExponentialFit.of(Material.ALUMINIUM.elasticModulusPa())).isEqualTo(ExponentialFit.ALUMINIUM);
        assertThat(ExponentialFit.of(Material.COPPER.elasticModulusPa())).isEqualTo(ExponentialFit.COPPER);
        assertThat(ExponentialFit.of(123e9)).isEqualTo(ExponentialFit.GENERAL);
    }

    /** With washer faces of 1.5 d and a hole of the bolt's size the three methods tell much the same. */
    @Test
    void theMethodsAgreeWithinAThird() {
        LayerStack stack = new LayerStack(List.of(Layer.of(Material.STEEL, 40e-3, 60e-3, 12e-3)), 18e-3);
        double frusta = PartsMethod.FRUSTA.complianceMPerN(stack, M12);
        for (PartsMethod method : PartsMethod.values()) {
            assertThat(method.complianceMPerN(stack, M12) / frusta).isBetween(0.75, 1.33);
        }
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> Layer.of(Material.STEEL, 0, 30e-3, 13e-3)).hasMessageContaining("thickness");
        assertThatThrownBy(() -> new Layer(0, 1e-3, 30e-3, 13e-3)).hasMessageContaining("elasticity");
        assertThatThrownBy(() -> Layer.of(Material.STEEL, 1e-3, 30e-3, -1e-3)).hasMessageContaining("hole");
        assertThatThrownBy(() -> Layer.of(Material.STEEL, 1e-3, 13e-3, 13e-3))
                .hasMessage("a layer of 13.00 mm outer diameter cannot hold a hole of 13.00 mm");
        Layer plate = Layer.of(Material.STEEL, 10e-3, 30e-3, 17e-3);
        assertThatThrownBy(() -> new LayerStack(List.of(plate), 16e-3))
                .hasMessage("hole of 17.00 mm is larger than the bearing face of head or nut, 16.00 mm");
        assertThatThrownBy(() -> new LayerStack(List.of(plate), 0)).hasMessageContaining("bearing face");
        assertThatThrownBy(() -> new LayerStack(List.of(), 16e-3)).hasMessageContaining("at least one");
        assertThatThrownBy(() -> new Bolt(M12, 205e9, 0, 0)).hasMessageContaining("make no grip");
        assertThatThrownBy(() -> new Bolt(M12, 205e9, -1e-3, 2e-3)).hasMessageContaining("make no grip");
        assertThatThrownBy(() -> new Bolt(M12, 205e9, 2e-3, -1e-3)).hasMessageContaining("make no grip");
        assertThatThrownBy(() -> new Bolt(M12, 0, 1e-3, 1e-3)).hasMessageContaining("elasticity");
        assertThatThrownBy(() -> new JointStiffness(0, 1e-9, List.of())).hasMessageContaining("compliances");
        assertThatThrownBy(() -> new JointStiffness(1e-9, 0, List.of())).hasMessageContaining("compliances");
        assertThatThrownBy(() -> new JointStiffness(1e-9, 1e-9, List.of(0.0))).hasMessageContaining("springs");
        LayerStack mixed = new LayerStack(
                List.of(
                        Layer.of(Material.STEEL, 10e-3, 30e-3, 13e-3),
                        Layer.of(Material.ALUMINIUM, 10e-3, 30e-3, 13e-3)),
                17e-3);
        assertThatThrownBy(() -> PartsMethod.EXPONENTIAL_FIT.complianceMPerN(mixed, M12))
                .hasMessageContaining("parts of one material");
        LayerStack thin = new LayerStack(List.of(Layer.of(Material.STEEL, 1e-8, 17e-3, 13e-3)), 17e-3);
        assertThatThrownBy(() -> PartsMethod.VDI_CONE.complianceMPerN(thin, M12))
                .hasMessageContaining("too short");
    }

    @Test
    void materialsAndMethodsHaveNames() {
        for (Material material : Material.values()) {
            assertThat(Material.named(" " + material.title().toUpperCase(java.util.Locale.ROOT)))
                    .isEqualTo(material);
        }
        for (PartsMethod method : PartsMethod.values()) {
            assertThat(PartsMethod.named(method.title() + " ")).isEqualTo(method);
            assertThat(method.sourceKey()).isNotBlank();
        }
        assertThatThrownBy(() -> Material.named("cheese")).hasMessageContaining("known are steel, stainless steel");
        assertThatThrownBy(() -> PartsMethod.named("guess")).hasMessageContaining("known are cone, frusta");
    }
}
