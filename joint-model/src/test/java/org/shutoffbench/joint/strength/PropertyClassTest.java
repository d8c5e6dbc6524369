package org.shutoffbench.joint.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.ScrewThread;
import org.shutoffbench.joint.thread.ThreadDesignation;

class PropertyClassTest {

    @ParameterizedTest
    @EnumSource(PropertyClass.class)
    void everyClassIsFoundByItsTitle(PropertyClass propertyClass) {
        assertThat(PropertyClass.named(" " + propertyClass.title() + " ")).isEqualTo(propertyClass);
        assertThat(propertyClass.sourceKey()).isNotBlank();
    }

    @Test
    void anUnknownClassIsRefusedWithTheKnownOnes() {
        assertThatThrownBy(() -> PropertyClass.named("11.9")).hasMessageContaining("known are 8.8, 10.9, 12.9, A4-70");
    }

    /** ISO 898-2 proof loads of nuts, kN, from memory: class 8, 10 and 12 regular nuts. */
    @ParameterizedTest
    @CsvSource({
        "M8, 8.8, 31.8",
        "M8, 10.9, 38.1",
        "M8, 12.9, 42.5",
        "M12, 8.8, 74.2",
        "M12, 10.9, 88.5",
        "M12, 12.9, 100.3",
        "M16, 8.8, 138.2",
        "M6, 8.8, 17.2",
        "M20, 8.8, 225.4",
        "M20, 12.9, 293.9"
    })
    void nutsBearTheirProofLoad(String thread, String propertyClass, double expectedKn) {
        double ours = PropertyClass.named(propertyClass).nutProofLoadN(ThreadDesignation.parse(thread)) / 1e3;
        assertThat(ours).isCloseTo(expectedKn, within(0.004 * expectedKn));
    }

    /** Proof stress of matching inch nuts in ksi (SAE J995, ASTM A563), from memory. */
    @ParameterizedTest
    @CsvSource({"grade 2, 90", "grade 5, 120", "grade 8, 150", "A325, 175", "A490, 175"})
    void inchNutsBearTheirProofStress(String propertyClass, double ksi) {
        ScrewThread thread = ThreadDesignation.parse("1/2-13");
        double load = PropertyClass.named(propertyClass).nutProofLoadN(thread);
        assertThat(load / thread.stressAreaM2() / CustomaryUnits.KSI_PA).isCloseTo(ksi, within(1e-9));
    }

    /** SAE J429, from memory: grade 2 falls above 3/4 in. */
    @Test
    void gradesFallWithSize() {
        double ksi = CustomaryUnits.KSI_PA;
        PropertyClass grade = PropertyClass.J429_GRADE_2;
        assertThat(grade.strength(ThreadDesignation.parse("3/4-10")).yieldPa()).isCloseTo(57 * ksi, within(1.0));
        assertThat(grade.strength(ThreadDesignation.parse("7/8-9")).yieldPa()).isCloseTo(36 * ksi, within(1.0));
        ScrewThread big = ScrewThread.metric(30e-3, 3.5e-3);
        assertThat(PropertyClass.J429_GRADE_5.strength(big)).isEqualTo(Strength.ksi(74, 81, 105));
        assertThat(PropertyClass.ISO_8_8
                        .strength(ThreadDesignation.parse("M16"))
                        .tensilePa())
                .isEqualTo(800e6);
        assertThat(PropertyClass.ISO_8_8
                        .strength(ThreadDesignation.parse("M18"))
                        .tensilePa())
                .isEqualTo(830e6);
    }

    @Test
    void strengthsRise() {
        assertThatThrownBy(() -> new Strength(0, 1, 2)).hasMessageContaining("strengths");
        assertThatThrownBy(() -> new Strength(2, 1, 3)).hasMessageContaining("strengths");
        assertThatThrownBy(() -> new Strength(1, 2, 2)).hasMessageContaining("strengths");
        assertThat(new Strength(1, 1, 2).yieldPa()).isEqualTo(1);
    }

    @Test
    void minimumPretensionIsForStructuralBolts() {
        assertThatThrownBy(() -> StructuralPretension.minimumN(PropertyClass.ISO_8_8, ThreadDesignation.parse("M12")))
                .hasMessageContaining("written for A325 and A490, not for 8.8");
    }

    @Test
    void utilisationScalesTheForce() {
        AssemblyLimit limit = new AssemblyLimit(ThreadDesignation.parse("M12"), 640e6, 0.12);
        assertThat(limit.forceN(0.5)).isCloseTo(limit.yieldForceN() / 2, within(1e-6));
        AssemblyLimit noFriction = new AssemblyLimit(ThreadDesignation.parse("M12"), 640e6, 0);
        assertThat(noFriction.yieldForceN())
                .isLessThan(640e6 * ThreadDesignation.parse("M12").stressAreaM2());
    }
}
