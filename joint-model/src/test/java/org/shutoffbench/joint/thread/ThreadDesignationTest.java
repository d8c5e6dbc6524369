package org.shutoffbench.joint.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThreadDesignationTest {

    /** Pitches from ISO 261 and threads per inch from ASME B1.1, from memory. */
    @ParameterizedTest
    @CsvSource({
        "M12, 12, 1.75, M12",
        "m12, 12, 1.75, M12",
        "M12x1.75, 12, 1.75, M12",
        "M12x1.25, 12, 1.25, M12x1.25",
        "M12 X 1.5, 12, 1.5, M12x1.5",
        "M8\u00d71, 8, 1, M8x1",
        "M36x3, 36, 3, M36x3",
        "M5x0.5, 5, 0.5, M5x0.5",
        "1/2-13, 12.7, 1.953846, 1/2-13",
        "3/4-16 UNF, 19.05, 1.5875, 3/4-16",
        "1-8 UNC, 25.4, 3.175, 1-8",
        "1-14, 25.4, 1.814286, 1-14",
        "' 1/4-20 ', 6.35, 1.27, 1/4-20"
    })
    void readsDesignations(String text, double diameterMm, double pitchMm, String written) {
        ScrewThread thread = ThreadDesignation.parse(text);
        assertThat(thread.majorDiameterM() * 1e3).isCloseTo(diameterMm, within(1e-9));
        assertThat(thread.pitchM() * 1e3).isCloseTo(pitchMm, within(1e-6));
        assertThat(thread.designation()).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(strings = {"M12x", "12", "", "half inch", "M-12", "M12x1.25x2", "1/2"})
    void refusesWhatIsNoDesignation(String text) {
        assertThatThrownBy(() -> ThreadDesignation.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is no thread designation; examples: M12, M12x1.25, 1/2-13");
    }

    @Test
    void refusesUnknownSizesAndPitchesAndSaysWhatIsKnown() {
        assertThatThrownBy(() -> ThreadDesignation.parse("M13")).hasMessageContaining("M5, M6, M8");
        assertThatThrownBy(() -> ThreadDesignation.parse("M12x1.3")).hasMessageContaining("M12 is coarse at 1.75 mm");
        assertThatThrownBy(() -> ThreadDesignation.parse("M12x2")).hasMessageContaining("no standard pitch");
        assertThatThrownBy(() -> ThreadDesignation.parse("5/32-13")).hasMessageContaining("1/4, 5/16");
        assertThatThrownBy(() -> ThreadDesignation.parse("1/2-14"))
                .hasMessageContaining("coarse at 13 and fine at 20 threads per inch");
        assertThatThrownBy(() -> ThreadDesignation.parse("3/4-14")).hasMessageContaining("no standard pitch");
    }

    @ParameterizedTest
    @EnumSource(MetricSize.class)
    void everyMetricSizeCanBeWritten(MetricSize size) {
        ScrewThread thread = ThreadDesignation.parse(size.name());
        assertThat(thread).isEqualTo(size.coarse());
        assertThat(ThreadDesignation.hexagonOf(thread)).contains(size.hexagon());
        requireSensible(thread, size.hexagon());
    }

    @ParameterizedTest
    @EnumSource(UnifiedSize.class)
    void everyUnifiedSizeCanBeWrittenCoarseAndFine(UnifiedSize size) {
        for (int count : new int[] {size.coarsePerInch(), size.finePerInch()}) {
            ScrewThread thread = ThreadDesignation.parse(size.title() + "-" + count);
            assertThat(thread.pitchM() * count).isCloseTo(0.0254, within(1e-15));
            assertThat(ThreadDesignation.hexagonOf(thread)).contains(size.hexagon());
            requireSensible(thread, size.hexagon());
        }
    }

    @Test
    void aThreadOfPlainNumbersHasNoStandardHexagon() {
        assertThat(ThreadDesignation.hexagonOf(ScrewThread.metric(13e-3, 1.5e-3)))
                .isEmpty();
    }

    @Test
    void threadsWithoutSizeAreRefused() {
        assertThatThrownBy(() -> ScrewThread.metric(0, 1e-3)).hasMessageContaining("positive");
        assertThatThrownBy(() -> ScrewThread.metric(12e-3, 0)).hasMessageContaining("positive");
        assertThatThrownBy(() -> ScrewThread.metric(Double.POSITIVE_INFINITY, 1e-3))
                .hasMessageContaining("finite");
        assertThatThrownBy(() -> ScrewThread.metric(3e-3, 2e-3))
                .hasMessageContaining("pitch 2.000 mm is too coarse for a thread of 3.000 mm");
    }

    private static void requireSensible(ScrewThread thread, HexDimensions hexagon) {
        double d = thread.majorDiameterM();
        assertThat(hexagon.clearanceHoleM()).isBetween(1.03 * d, 1.15 * d);
        assertThat(hexagon.bearingFaceM()).isBetween(hexagon.clearanceHoleM(), hexagon.acrossFlatsM());
        assertThat(hexagon.acrossFlatsM()).isBetween(1.42 * d, 1.8 * d);
        assertThat(hexagon.headHeightM()).isBetween(0.55 * d, 0.75 * d);
        assertThat(hexagon.nutHeightM()).isBetween(0.8 * d, 0.95 * d);
        assertThat(hexagon.meanBearingDiameterM()).isBetween(hexagon.clearanceHoleM(), hexagon.bearingFaceM());
    }
}
