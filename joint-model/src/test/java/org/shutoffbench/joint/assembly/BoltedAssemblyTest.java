package org.shutoffbench.joint.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.joint.stiffness.Bolt;
import org.shutoffbench.joint.stiffness.JointStiffness;
import org.shutoffbench.joint.stiffness.Layer;
import org.shutoffbench.joint.stiffness.Material;
import org.shutoffbench.joint.stiffness.PartsMethod;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;

class BoltedAssemblyTest {

    private static final ScrewThread M12 = MetricSize.M12.coarse();

    private static BoltedAssembly.Builder m12() {
        return BoltedAssembly.of(M12, PropertyClass.ISO_8_8);
    }

    private static Layer plate(double thicknessM) {
        return Layer.of(Material.STEEL, thicknessM, 50e-3, 13.5e-3);
    }

    /** M12 on 60 mm: nut 10.8 mm and two pitches need 74.3 mm, so 75 mm with 30 mm of thread (ISO 4014, ISO 888). */
    @Test
    void aSizeAndAGripAreEnough() {
        BoltedAssembly joint = m12().grip(60e-3).build();
        assertThat(joint.boltLength().lengthM()).isCloseTo(75e-3, within(1e-12));
        assertThat(joint.boltLength().threadLengthM()).isCloseTo(30e-3, within(1e-12));
        assertThat(joint.bolt())
                .isEqualTo(new Bolt(
                        M12,
                        205e9,
                        joint.boltLength().shankM(),
                        60e-3 - joint.boltLength().shankM()));
        assertThat(joint.bolt().shankLengthM()).isCloseTo(45e-3, within(1e-12));
        assertThat(joint.bearingDiameterM()).isCloseTo((16.63e-3 + 13.5e-3) / 2, within(1e-12));
        assertThat(joint.lengthPastNutFaceM()).isCloseTo(15e-3, within(1e-12));
        assertThat(joint.innerInterfaces()).isZero();
        assertThat(joint.stack().gripM()).isCloseTo(60e-3, within(1e-12));
        assertThat(joint.stack().meanOuterDiameterM()).isCloseTo(3 * 16.63e-3, within(1e-12));
        assertThat(joint.method()).isEqualTo(PartsMethod.VDI_CONE);
        assertThat(joint.propertyClass()).isEqualTo(PropertyClass.ISO_8_8);
        assertThat(joint.thread()).isEqualTo(M12);
        assertThat(joint.hexagon()).isEqualTo(MetricSize.M12.hexagon());
    }

    @Test
    void stiffnessIsTheSeriesOfBoltPartsAndSprings() {
        BoltedAssembly joint = m12().grip(60e-3).spring(500e6).build();
        JointStiffness expected = new JointStiffness(
                joint.bolt().complianceMPerN(),
                PartsMethod.VDI_CONE.complianceMPerN(joint.stack(), M12),
                List.of(500e6));
        assertThat(joint.stiffness()).isEqualTo(expected);
        assertThat(joint.stiffness().seriesNPerM())
                .isLessThan(m12().grip(60e-3).build().stiffness().seriesNPerM());
    }

    @Test
    void theGripFollowsFromLayersAndWashers() {
        Washer washer = Washer.normal(12e-3);
        BoltedAssembly joint = m12().layers(List.of(plate(20e-3), plate(30e-3)))
                .washers(List.of(washer, washer))
                .build();
        assertThat(joint.stack().gripM()).isCloseTo(50e-3 + 2 * 2.4e-3, within(1e-12));
        assertThat(joint.stack().layers()).hasSize(4);
        assertThat(joint.stack().layers().get(0)).isEqualTo(washer.asLayer());
        assertThat(joint.stack().layers().get(3)).isEqualTo(washer.asLayer());
        assertThat(joint.innerInterfaces()).isEqualTo(3);
        assertThat(joint.bearingDiameterM()).isCloseTo((16.63e-3 + 1.08 * 12e-3) / 2, within(1e-12));
    }

    @Test
    void oneWasherGoesUnderTheNut() {
        BoltedAssembly joint =
                m12().grip(60e-3).washers(List.of(Washer.normal(12e-3))).build();
        assertThat(joint.stack().layers()).hasSize(2);
        assertThat(joint.stack().layers().get(1)).isEqualTo(Washer.normal(12e-3).asLayer());
        assertThat(joint.stack().layers().get(0).thicknessM()).isCloseTo(57.6e-3, within(1e-12));
        assertThat(joint.stack().gripM()).isCloseTo(60e-3, within(1e-12));
    }

    @Test
    void everyDefaultCanBeReplaced() {
        BoltedAssembly joint = m12().grip(40e-3)
                .hole(13e-3)
                .bearingFace(20e-3)
                .nutHeight(14e-3)
                .boltLength(70e-3)
                .threadLength(60e-3)
                .boltMaterial(Material.TITANIUM)
                .method(PartsMethod.FRUSTA)
                .build();
        assertThat(joint.bearingDiameterM()).isCloseTo(16.5e-3, within(1e-12));
        assertThat(joint.hexagon().nutHeightM()).isEqualTo(14e-3);
        assertThat(joint.boltLength()).isEqualTo(new BoltLength(70e-3, 60e-3));
        assertThat(joint.bolt().elasticModulusPa()).isEqualTo(110e9);
        assertThat(joint.bolt().shankLengthM()).isCloseTo(10e-3, within(1e-12));
        assertThat(joint.method()).isEqualTo(PartsMethod.FRUSTA);
        assertThat(BoltedAssembly.of(M12, PropertyClass.A4_70)
                        .grip(40e-3)
                        .build()
                        .bolt()
                        .elasticModulusPa())
                .isEqualTo(195e9);
    }

    @Test
    void aThreadOfNoStandardSizeNeedsItsDimensions() {
        ScrewThread m13 = ScrewThread.metric(13e-3, 1.5e-3);
        BoltedAssembly.Builder bare =
                BoltedAssembly.of(m13, PropertyClass.ISO_10_9).grip(50e-3);
        assertThatThrownBy(bare::build).hasMessageContaining("no standard bolt for thread M13x1.5");
        assertThatThrownBy(() -> bare.bearingFace(18e-3).build()).hasMessageContaining("no standard bolt");
        BoltedAssembly joint = bare.bearingFace(18e-3).nutHeight(12e-3).build();
        assertThat(joint.bearingDiameterM()).isCloseTo((18e-3 + 1.1 * 13e-3) / 2, within(1e-12));
        assertThat(joint.hexagon().headHeightM()).isCloseTo(0.65 * 13e-3, within(1e-12));
        assertThat(joint.hexagon().acrossFlatsM()).isEqualTo(18e-3);
    }

    @Test
    void yieldAndStrippingFollowFromClassAndFriction() {
        BoltedAssembly joint = m12().grip(60e-3).build();
        assertThat(joint.limit(0.12).yieldStrengthPa()).isEqualTo(640e6);
        assertThat(joint.mayStrip(0.12)).isFalse();
        double nut = PropertyClass.A4_70.nutProofLoadN(M12);
        BoltedAssembly stainless =
                BoltedAssembly.of(M12, PropertyClass.A4_70).grip(60e-3).build();
        assertThat(nut).isGreaterThan(stainless.limit(0.1).yieldForceN());
    }

    @Test
    void jointsThatCannotBePutTogetherAreRefusedWithTheReason() {
        assertThatThrownBy(() -> m12().grip(10e-3).build())
                .hasMessage("grip of 10.00 mm is shorter than the thread engagement of 10.80 mm (nut height)");
        assertThat(m12().grip(10.8e-3).build().stack().gripM()).isCloseTo(10.8e-3, within(1e-12));
        assertThatThrownBy(() -> m12().grip(60e-3).hole(17e-3).build())
                .hasMessageContaining("is larger than the bearing face of head or nut");
        assertThatThrownBy(() -> m12().grip(60e-3).hole(11.9e-3).build())
                .hasMessage("hole of 11.90 mm has negative clearance to a bolt of 12.00 mm");
        assertThat(m12().grip(60e-3).hole(12e-3).build().bearingDiameterM()).isCloseTo(14.315e-3, within(1e-12));
        assertThatThrownBy(() -> m12().grip(60e-3).boltLength(70e-3).build())
                .hasMessage("bolt of 70.00 mm does not reach through grip and nut, 70.80 mm");
        assertThatThrownBy(() -> m12().grip(30e-3).boltLength(80e-3).build())
                .hasMessageContaining("unthreaded shank of 50.00 mm is longer than the grip of 30.00 mm");
        assertThatThrownBy(() -> m12().build()).hasMessage("give layers, or a grip longer than the washers");
        assertThatThrownBy(() ->
                        m12().grip(2e-3).washers(List.of(Washer.normal(12e-3))).build())
                .hasMessage("give layers, or a grip longer than the washers");
        assertThatThrownBy(() -> m12().grip(60e-3).layers(List.of(plate(50e-3))).build())
                .hasMessage("grip of 60.00 mm differs from layers and washers, 50.00 mm");
        assertThat(m12().grip(50e-3)
                        .layers(List.of(plate(50e-3)))
                        .build()
                        .stack()
                        .gripM())
                .isEqualTo(50e-3);
        Washer washer = Washer.normal(12e-3);
        assertThatThrownBy(() -> m12().washers(List.of(washer, washer, washer))).hasMessageContaining("at most two");
    }

    /** Thread lengths of ISO 888 and ASME B18.2.1, from memory: 2 d + 6, 12, 25 mm by length; 2 d + 1/4 or 1/2 in. */
    @Test
    void threadLengthFollowsTheBoltLength() {
        assertThat(BoltLength.standard(M12, 125e-3).threadLengthM()).isCloseTo(30e-3, within(1e-12));
        assertThat(BoltLength.standard(M12, 126e-3).threadLengthM()).isCloseTo(36e-3, within(1e-12));
        assertThat(BoltLength.standard(M12, 200e-3).threadLengthM()).isCloseTo(36e-3, within(1e-12));
        assertThat(BoltLength.standard(M12, 201e-3).threadLengthM()).isCloseTo(49e-3, within(1e-12));
        assertThat(BoltLength.standard(M12, 20e-3).threadLengthM()).isCloseTo(20e-3, within(1e-12));
        ScrewThread half = ThreadDesignation.parse("1/2-13");
        assertThat(BoltLength.standard(half, 6 * 25.4e-3).threadLengthM()).isCloseTo(1.25 * 25.4e-3, within(1e-12));
        assertThat(BoltLength.standard(half, 6.1 * 25.4e-3).threadLengthM()).isCloseTo(1.5 * 25.4e-3, within(1e-12));
        assertThatThrownBy(() -> new BoltLength(0, 1e-3)).hasMessageContaining("bolt length");
        assertThatThrownBy(() -> new BoltLength(1e-2, 2e-2)).hasMessageContaining("thread length");
        assertThatThrownBy(() -> new BoltLength(1e-2, 0)).hasMessageContaining("thread length");
    }

    @Test
    void boltsComeInSteps() {
        assertThat(BoltLength.shortestFor(M12, 60e-3, 10e-3).lengthM()).isCloseTo(75e-3, within(1e-12));
        assertThat(BoltLength.shortestFor(M12, 61.5e-3, 10e-3).lengthM()).isCloseTo(75e-3, within(1e-12));
        assertThat(BoltLength.shortestFor(M12, 62e-3, 10e-3).lengthM()).isCloseTo(80e-3, within(1e-12));
        assertThat(BoltLength.shortestFor(M12, 66.5e-3, 10e-3).lengthM()).isCloseTo(80e-3, within(1e-12));
        assertThat(BoltLength.shortestFor(M12, 70e-3, 10e-3).lengthM()).isCloseTo(90e-3, within(1e-12));
        ScrewThread half = ThreadDesignation.parse("1/2-13");
        assertThat(BoltLength.shortestFor(half, 50.8e-3, 11e-3).lengthM()).isCloseTo(2.75 * 25.4e-3, within(1e-12));
    }
}
