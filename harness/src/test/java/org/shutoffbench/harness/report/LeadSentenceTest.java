package org.shutoffbench.harness.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.study.Headline;
import org.shutoffbench.harness.study.Headline.Finding;
import org.shutoffbench.harness.study.Ranking;
import org.shutoffbench.harness.study.Ranking.WorstFamilyDifference;
import org.shutoffbench.harness.study.Rate;
import org.shutoffbench.harness.study.StudySummary;

/** Every sentence that data allow, on invented figures. Strategy 0 is one of two settings tables, 4 stands alone. */
class LeadSentenceTest {

    private static final StudySummary STUDY = new InventedStudy(100).summary;
    private static final Names NAMES = new Names(STUDY);
    private static final WorstFamilyDifference UNDECIDED =
            new WorstFamilyDifference(0, 0, 1, 500, 0.002, -0.008, 0.008, 0.4, false);

    private static StudySummary with(Headline headline) {
        return with(headline, STUDY.ranking());
    }

    private static StudySummary with(Headline headline, Ranking ranking) {
        return new StudySummary(
                STUDY.format(),
                STUDY.scenario(),
                STUDY.judge(),
                STUDY.methods(),
                STUDY.families(),
                STUDY.strategies(),
                STUDY.cells(),
                STUDY.comparisons(),
                ranking,
                headline,
                STUDY.torqueRatePairs(),
                STUDY.covariateCurves(),
                STUDY.prevailingScans(),
                STUDY.stopping());
    }

    private static String lead(Headline headline) {
        return Span.plain(LeadSentence.of(with(headline), NAMES));
    }

    private static Headline headline(Finding finding, Rate worst, Headline.SilentMiss miss, int... leaders) {
        List<Integer> named = new ArrayList<>();
        for (int leader : leaders) {
            named.add(leader);
        }
        return new Headline(finding, named, 2, worst, List.of(), miss);
    }

    private static Rate rate(int count, int n) {
        return new Rate(count, n, (double) count / n, 0, 1, "Clopper-Pearson", 1);
    }

    private static Headline.SilentMiss miss(int count, int n) {
        return new Headline.SilentMiss(5, 2, rate(count, n));
    }

    @Test
    void aSeparatedLeaderBroughtAtLeastItsWorstRate() {
        assertThat(lead(headline(Finding.SEPARATED, rate(498, 500), miss(210, 500), 4)))
                .isEqualTo("Angle from snug brought at least 99.6 % of joints into the window on every family; "
                        + "blow count (home) called 42.0 % of lock nut joints done while they were low or unseated.");
    }

    @Test
    void allIsWrittenAsACount() {
        assertThat(lead(headline(Finding.SEPARATED, rate(500, 500), miss(500, 500), 4)))
                .isEqualTo(
                        "Angle from snug brought all joints (500 of 500 in its worst family) into the window on every"
                                + " family; blow count (home and all) brought none of 500 lock nut joints into the window and"
                                + " called all of them done.");
    }

    @Test
    void inseparableStrategiesAreNeverCalledEqual() {
        Headline headline =
                new Headline(Finding.INSEPARABLE, List.of(0, 1), 0, rate(499, 500), List.of(UNDECIDED), miss(500, 500));
        List<Ranking.Standing> standings = List.of(
                new Ranking.Standing(0, 0, rate(499, 500), true, 1, 2),
                new Ranking.Standing(1, 0, rate(498, 500), true, 1, 2));
        StudySummary study = with(headline, new Ranking(standings, List.of(UNDECIDED), null));

        assertThat(Span.plain(LeadSentence.of(study, NAMES)))
                .startsWith(
                        "Adaptive estimation (all) and adaptive estimation (home) cannot be told apart: each brought"
                                + " at least 99.6 % of joints into the window on every family; ")
                .doesNotContainIgnoringCase("equal");
        assertThat(LeadSentence.note(study, NAMES))
                .isEqualTo("Difference between adaptive estimation (all) and adaptive estimation (home) on hard plain:"
                        + " +0.2 points, 95 % bounds \u22120.8 to +0.8, paired on the same 500 joints. More joints may"
                        + " separate them. Rates are per joint run; intervals 95 %, Clopper-Pearson.");
    }

    @Test
    void whereNoneServesTheBestIsNamedWithItsRate() {
        assertThat(lead(headline(Finding.NONE_SERVES, rate(226, 500), null, 4)))
                .isEqualTo(
                        "No strategy served every family: the best, angle from snug, brought 45.2 % of lock nut joints"
                                + " into the window; no strategy called a low or unseated joint done.");
    }

    @Test
    void whereTheBestBroughtNoneThereIsNoBest() {
        assertThat(lead(headline(Finding.NONE_SERVES, rate(0, 500), null, 4, 3)))
                .startsWith("No strategy served every family: each brought none of 500 joints into the window on some"
                        + " family; ");
    }

    @Test
    void fewJointsAreNotRankedAndAreCounted() {
        assertThat(lead(headline(Finding.TOO_FEW, rate(20, 20), miss(3, 20), 4)))
                .isEqualTo("Too few joints to rank: fewer than 50 ran in some cells; blow count (home) called 3 of 20"
                        + " lock nut joints done while they were low or unseated.");
    }

    @Test
    void oneStrategyIsComparedWithNone() {
        assertThat(lead(headline(Finding.ALONE, rate(450, 500), null, 4)))
                .startsWith(
                        "Angle from snug brought at least 90.0 % of joints into the window on every family, compared"
                                + " with no other strategy; ");
    }

    @Test
    void nothingRanSaysSoAndNothingElse() {
        assertThat(lead(new Headline(Finding.NOTHING_RAN, List.of(), -1, null, List.of(), null)))
                .isEqualTo("No strategy ran on every family, so none is ranked.");
    }

    @Test
    void threeLeadersReadAsAList() {
        assertThat(Span.plain(LeadSentence.of(
                        with(new Headline(
                                Finding.INSEPARABLE,
                                List.of(0, 1, 2),
                                0,
                                rate(499, 500),
                                List.of(UNDECIDED, UNDECIDED, UNDECIDED, UNDECIDED),
                                null)),
                        NAMES)))
                .startsWith("Adaptive estimation (all and home) and energy per blow cannot be told apart");
    }

    @Test
    void manyDifferencesAreCutShort() {
        Headline many = new Headline(
                Finding.INSEPARABLE,
                List.of(0, 1, 2),
                0,
                rate(499, 500),
                List.of(UNDECIDED, UNDECIDED, UNDECIDED, UNDECIDED, UNDECIDED),
                null);
        assertThat(LeadSentence.note(with(many), NAMES)).contains(" 4 more in the table of comparisons. ");
    }

    @Test
    void strategyNamesAreMarked() {
        assertThat(LeadSentence.of(with(headline(Finding.SEPARATED, rate(498, 500), miss(1, 500), 4)), NAMES))
                .filteredOn(Span::name)
                .extracting(Span::text)
                .containsExactly("Angle from snug", "blow count (home)");
    }
}
