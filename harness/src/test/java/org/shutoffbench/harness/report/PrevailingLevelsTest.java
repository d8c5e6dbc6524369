package org.shutoffbench.harness.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.harness.run.Outcome;
import org.shutoffbench.harness.study.PrevailingScan;
import org.shutoffbench.harness.study.PrevailingScan.Ending;
import org.shutoffbench.harness.study.PrevailingScan.Level;
import org.shutoffbench.harness.study.StudySummary;

/** The level at which a count stops closing a lock nut, on invented scans. Strategy 5 counts blows, set at home. */
class PrevailingLevelsTest {

    private static final StudySummary STUDY = new InventedStudy(100).summary;
    private static final int COUNTING = 5;

    private static Level level(double torqueNm, int before, Outcome counted) {
        List<Ending> endings = new ArrayList<>();
        for (int s = 0; s < STUDY.strategies().size(); s++) {
            endings.add(new Ending(s == COUNTING ? counted : Outcome.IN_WINDOW, Verdict.REACHED, 7));
        }
        return new Level(torqueNm, before, endings);
    }

    private static PrevailingLevels of(Level... levels) {
        StudySummary summary = new StudySummary(
                STUDY.format(),
                STUDY.scenario(),
                STUDY.judge(),
                STUDY.methods(),
                STUDY.families(),
                STUDY.strategies(),
                STUDY.cells(),
                STUDY.comparisons(),
                STUDY.ranking(),
                STUDY.headline(),
                STUDY.torqueRatePairs(),
                STUDY.covariateCurves(),
                List.of(new PrevailingScan(2, List.of(levels))),
                STUDY.stopping());
        return new PrevailingLevels(summary, new Names(summary));
    }

    @Test
    void theLevelIsWhereTheCountIsSpentBeforeTheJoint() {
        PrevailingLevels.Finding found = of(
                        level(0, 0, Outcome.LOW),
                        level(1, 1, Outcome.UNSEATED),
                        level(2, 4, Outcome.LOW),
                        level(3, 7, Outcome.UNSEATED),
                        level(4, 9, Outcome.UNSEATED))
                .finding()
                .orElseThrow();
        assertThat(found.heading())
                .isEqualTo(
                        "From 3 N\u00b7m of prevailing torque on, blow count (home) stops after 7 blows before the median"
                                + " lock nut is seated, and calls it done");
        assertThat(found.reason())
                .contains("no blow without prevailing torque, 7 blows at 3 N\u00b7m and 9 blows at 4");
    }

    @Test
    void aCountThatOnlyLeavesItLowSaysSo() {
        PrevailingLevels.Finding found = of(level(0, 0, Outcome.IN_WINDOW), level(1, 1, Outcome.LOW))
                .finding()
                .orElseThrow();
        assertThat(found.heading()).startsWith("From 1 N\u00b7m").contains("leaves the median lock nut low");
    }

    @Test
    void aCountThatHoldsHasNoLevel() {
        assertThat(of(level(0, 0, Outcome.IN_WINDOW), level(1, 1, Outcome.HIGH)).finding())
                .isEmpty();
    }

    @Test
    void theTableHasARowForEachStrategyAndOneForTheNut() {
        PlainTable table = of(level(0, 0, Outcome.IN_WINDOW), level(1, 3, Outcome.UNSEATED))
                .tables()
                .get(0);
        assertThat(table.rows()).hasSize(STUDY.strategies().size() + 1);
        assertThat(table.rows().get(0)).containsExactly("blows before the nut touches the joint", "0", "3");
        assertThat(table.rows()).contains(List.of("blow count (home)", "in window, 7", "unseated, 7"));
    }
}
