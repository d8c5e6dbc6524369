package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.study.InventedStudy;

class SummaryTableTest {

    private final String table = new SummaryTable(InventedStudy.summary(400)).toString();

    @Test
    void aRateOfNoneReadsZeroAndItsUpperBoundDoesNot() {
        // none of 400: Clopper-Pearson, 1 - 0.025^(1/400) [Clopper1934]
        assertThat(table).contains("0 (0 to 0.9)").doesNotContain("(0.0 to 0.0)");
    }

    @Test
    void steppedOverEventsAreSaid() {
        assertThat(table).contains("On 600 tightenings the plant stepped over events");
    }
}
