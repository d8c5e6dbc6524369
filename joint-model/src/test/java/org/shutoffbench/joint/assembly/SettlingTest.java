package org.shutoffbench.joint.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SettlingTest {

    /** VDI 2230 table 5, from memory: medium surfaces under axial load 3 + 2 x 3 + n x 2 um. */
    @Test
    void embeddingAddsThreadFacesAndInterfaces() {
        assertThat(Embedding.MEDIUM_AXIAL.amountM(0)).isCloseTo(9e-6, within(1e-15));
        assertThat(Embedding.MEDIUM_AXIAL.amountM(2)).isCloseTo(13e-6, within(1e-15));
        assertThat(Embedding.FINE_AXIAL.amountM(1)).isCloseTo(9.5e-6, within(1e-15));
        assertThat(Embedding.COARSE_AXIAL.amountM(1)).isCloseTo(14e-6, within(1e-15));
        assertThat(Embedding.FINE_SHEAR.amountM(1)).isCloseTo(11e-6, within(1e-15));
        assertThat(Embedding.MEDIUM_SHEAR.amountM(1)).isCloseTo(14.5e-6, within(1e-15));
        assertThat(Embedding.COARSE_SHEAR.amountM(1)).isCloseTo(19.5e-6, within(1e-15));
        assertThat(Embedding.MEDIUM_AXIAL.lossN(2, 200e6)).isCloseTo(2600, within(1e-9));
        assertThatThrownBy(() -> Embedding.FINE_AXIAL.amountM(-1)).hasMessageContaining("interfaces");
    }

    @Test
    void relaxationTakesAShareOfEachDecade() {
        Relaxation relaxation = new Relaxation(0.02, 1);
        assertThat(relaxation.forceN(50e3, 0)).isEqualTo(50e3);
        assertThat(relaxation.forceN(50e3, 9)).isCloseTo(49e3, within(1e-6));
        assertThat(relaxation.forceN(50e3, 99)).isCloseTo(48e3, within(1e-6));
        assertThat(new Relaxation(0.02, 10).forceN(50e3, 90)).isCloseTo(49e3, within(1e-6));
        assertThat(new Relaxation(0.9, 1).forceN(50e3, 1e9)).isZero();
        assertThat(Relaxation.ASSUMED_SOFT.forceN(1, 100)).isLessThan(Relaxation.ASSUMED_STEEL.forceN(1, 100));
        assertThatThrownBy(() -> new Relaxation(1, 1)).hasMessageContaining("relaxation");
        assertThatThrownBy(() -> new Relaxation(-0.1, 1)).hasMessageContaining("relaxation");
        assertThatThrownBy(() -> new Relaxation(0.1, 0)).hasMessageContaining("relaxation");
    }

    @Test
    void theTurnOfNutRuleEndsAtTwelveDiameters() {
        assertThatThrownBy(() -> TurnOfNut.of(0.241, 0.02)).hasMessageContaining("12 diameters");
        assertThat(TurnOfNut.of(0.05, 0.02).turns()).isCloseTo(1.0 / 3, within(1e-12));
        assertThatThrownBy(() -> PreloadAccuracy.ofTighteningFactor(0.9)).hasMessageContaining("at least 1");
        assertThat(PreloadAccuracy.ofTighteningFactor(1)).isZero();
    }

    @Test
    void namesAreWritten() {
        assertThat(Embedding.MEDIUM_AXIAL.title()).isEqualTo("medium, axial load");
        assertThat(PreloadAccuracy.FEEL.title()).isEqualTo("by feel");
    }
}
