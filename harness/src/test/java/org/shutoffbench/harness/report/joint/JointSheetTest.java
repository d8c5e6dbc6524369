package org.shutoffbench.harness.report.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointSpecification;
import org.shutoffbench.joint.YieldLimit;
import org.shutoffbench.joint.assembly.BoltedAssembly;
import org.shutoffbench.joint.assembly.Embedding;
import org.shutoffbench.joint.prevailing.LockNutKind;
import org.shutoffbench.joint.strength.PropertyClass;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;

class JointSheetTest {

    private static final Path REFERENCES = Path.of("../docs/references.md");

    @Test
    void everySourceIsListedInTheReferencesOrIsPlainWords() throws IOException {
        String references = Files.readString(REFERENCES);
        for (String size : List.of("M12", "3/4-10")) {
            for (PropertyClass propertyClass : PropertyClass.values()) {
                for (FactSection section :
                        JointSheet.of(subject(size, propertyClass)).sections()) {
                    for (Fact fact : section.facts()) {
                        boolean key = fact.source().matches("[A-Z][A-Za-z]+[0-9-].*|MachineryHandbook");
                        assertThat(!key || references.contains("| " + fact.source() + " |"))
                                .as("%s [%s]", fact.name(), fact.source())
                                .isTrue();
                    }
                }
            }
        }
    }

    @Test
    void everyFactHasANameOfItsOwn() {
        Set<String> names = new HashSet<>();
        for (FactSection section :
                JointSheet.of(subject("M12", PropertyClass.ISO_8_8)).sections()) {
            for (Fact fact : section.facts()) {
                assertThat(names.add(fact.name())).as(fact.name()).isTrue();
                assertThat(fact.si()).isFinite();
            }
        }
    }

    @Test
    void structuralBoltsHaveAMinimumPretension() {
        String text = SheetText.of(JointSheet.of(subject("3/4-10", PropertyClass.A325)), UnitSystem.CUSTOMARY);
        assertThat(text).containsPattern("minimum pretension of structural bolts +28.00 kip +\\[RCSC-2014]");
    }

    @Test
    void aWeakNutIsWarnedOf() {
        String text = SheetText.of(JointSheet.of(subject("M36", PropertyClass.ISO_12_9, 0)), UnitSystem.SI);
        double nut = PropertyClass.ISO_12_9.nutProofLoadN(ThreadDesignation.parse("M36"));
        double bolt = subject("M36", PropertyClass.ISO_12_9, 0).limit().yieldForceN();
        assertThat(text.contains("may strip")).isEqualTo(nut < bolt);
    }

    @Test
    void numbersArePrintedToFourDigits() {
        assertThat(new Fact("x", "", Measure.PURE, 0, "").printed(UnitSystem.SI))
                .isEqualTo("0");
        assertThat(new Fact("x", "", Measure.PURE, 0.123456, "").printed(UnitSystem.SI))
                .isEqualTo("0.1235");
        assertThat(new Fact("x", "", Measure.FORCE, 12345.6, "").printed(UnitSystem.SI))
                .isEqualTo("12.35");
        assertThat(new Fact("x", "", Measure.PURE, -98765, "").printed(UnitSystem.SI))
                .isEqualTo("-98765");
    }

    @Test
    void axesHaveRoundSteps() {
        assertThat(Axis.step(6)).isEqualTo(1);
        assertThat(Axis.step(12)).isEqualTo(2);
        assertThat(Axis.step(25)).isEqualTo(5);
        assertThat(Axis.step(55)).isEqualTo(10);
        assertThat(Axis.roundUp(103)).isEqualTo(120);
        assertThat(Axis.ticks(-25, 47)).containsExactly(-20, -10, 0, 10, 20, 30, 40);
        assertThat(Axis.label(-0.0)).isEqualTo("0");
        assertThat(Axis.label(0.25)).isEqualTo("0.25");
        assertThat(Axis.label(100)).isEqualTo("100");
    }

    private static JointSubject subject(String size, PropertyClass propertyClass) {
        return subject(size, propertyClass, 0.12);
    }

    private static JointSubject subject(String size, PropertyClass propertyClass, double threadFriction) {
        ScrewThread thread = ThreadDesignation.parse(size);
        BoltedAssembly assembly = BoltedAssembly.of(thread, propertyClass)
                .nutHeight(LockNutKind.NON_METALLIC_INSERT.heightM(thread))
                .grip(4 * thread.majorDiameterM())
                .spring(1e9)
                .build();
        JointSpecification joint = new JointSpecification(
                thread,
                assembly.bearingDiameterM(),
                threadFriction,
                0.12,
                assembly.stiffness().seriesNPerM(),
                0.1,
                10,
                0.2,
                1.05,
                new YieldLimit.OfMaterial(propertyClass.strength(thread).yieldPa()),
                List.of(),
                Galling.NONE);
        return new JointSubject(
                size,
                joint,
                assembly,
                propertyClass,
                LockNutKind.NON_METALLIC_INSERT,
                Embedding.MEDIUM_AXIAL,
                Double.NaN);
    }
}
