package org.shutoffbench.harness.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Records and reports of different versions are compared by these words, so the words are part of the format. */
class OutcomeTest {

    @Test
    void outcomesAreJudgedInThePublishedOrderUnderThePublishedWords() {
        assertThat(Arrays.stream(Outcome.values()).map(Outcome::title))
                .containsExactly("fractured", "yielded", "unseated", "low", "high", "in window");
    }

    @Test
    void endReasonsCarryThePublishedWords() {
        assertThat(Arrays.stream(EndReason.values()).map(EndReason::title))
                .containsExactly("shutoff", "time limit", "fracture", "battery", "fault");
    }
}
