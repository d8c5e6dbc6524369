package org.shutoffbench.harness.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.study.TuningNote.Tally;

class TuningNoteTest {

    private static final TuningNote NOTE = new TuningNote(new Tally(254, 800, 208), new Tally(249, 800, 215));

    @Test
    void whatATableSaysOfATunedStrategyReadsBack() {
        assertThat(TuningNote.read(Map.of("blow count", "100 evaluations; " + NOTE.words()), "blow count"))
                .isEqualTo(NOTE);
    }

    @Test
    void whatATableSaysOfATrainedStrategyReadsBack() {
        Map<String, String> texts = Map.of(
                TuningNote.IN_TRAINING, NOTE.made().words(),
                TuningNote.IN_VALIDATION, NOTE.validated().words());
        assertThat(TuningNote.read(texts, "learned regression")).isEqualTo(NOTE);
    }

    @Test
    void aTableWrittenByHandSaysNothing() {
        assertThat(TuningNote.read(Map.of("blow count", "set by the crew's foreman"), "blow count"))
                .isNull();
    }
}
