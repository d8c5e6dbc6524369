package org.shutoffbench.harness.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.study.Family;
import org.shutoffbench.harness.study.Methods;
import org.shutoffbench.harness.study.StoppingReport;
import org.shutoffbench.harness.study.Strategy;
import org.shutoffbench.harness.study.StudyAccumulator;
import org.shutoffbench.harness.study.StudyPlan;
import org.shutoffbench.harness.study.StudySummary;

/** The page as text: what a reader without a script gets, and what must never get into it. */
class HtmlReportTest {

    private static final InventedStudy STUDY = new InventedStudy(500);
    private static final String PAGE = HtmlReport.html(STUDY.summary, InventedStudy.facts(), STUDY.worst());
    private static final String WITHOUT_SCRIPTS =
            Pattern.compile("<script.*?</script>", Pattern.DOTALL).matcher(PAGE).replaceAll("");

    @Test
    void staysUnderThreeMegabytes() {
        assertThat(PAGE.getBytes(StandardCharsets.UTF_8).length).isLessThan(3_000_000);
    }

    @Test
    void leadAndTablesStandWithoutAScript() {
        assertThat(WITHOUT_SCRIPTS)
                .contains("cannot be told apart")
                .contains("<table class=\"matrix\"")
                .contains("not run: needs a torque channel")
                .contains("only 212 of 500 joints ran")
                .contains("Table of all rates, with false stops, false alarms and undecided")
                .contains(Caution.TEXT.substring(0, 40));
    }

    /** Below 2,731 joints: the correlation of neighbours stands before the index, which is withheld with its reason. */
    @Test
    void noCapabilityIsPrintedBeforeItsConditions() {
        assertThat(WITHOUT_SCRIPTS)
                .containsSubsequence("lag-1 autocorrelation", "capability, whole window", "why none")
                .contains("below 2731 joints the outer points stay open")
                .contains("distribution-free: 500 joints suffice for it")
                .contains("test that all strategies do alike, families as blocks");
    }

    @Test
    void readsNothingFromAnywhere() {
        assertThat(WITHOUT_SCRIPTS)
                .doesNotContainPattern("(src|href)=\"(?!data:)")
                .doesNotContain("url(")
                .doesNotContain("@import")
                .contains("default-src 'none'");
    }

    @Test
    void namesFromTheScenarioCannotBecomeMarkup() {
        String attack = "</script><script>alert(1)</script><img src=x onerror=alert(1)>\"'&{{x}}\u2028";
        StudyPlan plan = new StudyPlan(
                attack,
                InventedStudy.JUDGE,
                List.of(new Family(attack, attack, 60, 60, 60, 1, null)),
                List.of(new Strategy(attack, Strategy.SettingsKind.GIVEN, List.of(attack))),
                List.of(new StudyPlan.NotRun(0, 0, attack)),
                null,
                Methods.DEFAULT);
        StudySummary summary =
                new StudyAccumulator(plan).summarise(new StoppingReport("fixed number of joints", attack, 1, true));
        String page = HtmlReport.html(
                summary,
                new RunFacts(List.of(attack), attack, List.of(new RunFacts.Fact(attack, attack)), List.of()),
                null);
        String outside = Pattern.compile("<script>.*?</script>", Pattern.DOTALL)
                .matcher(page)
                .replaceAll("");
        assertThat(outside).doesNotContain("<script>").doesNotContain("<img");
        assertThat(outside).contains("&lt;img src&#x3D;x");
        assertThat(page.split("</script>", -1)).hasSize(4);
    }

    @Test
    void everyRateIsPrintedAsTheSummaryHasIt() {
        STUDY.summary.cells().stream()
                .filter(cell -> cell.rates() != null)
                .forEach(cell -> assertThat(WITHOUT_SCRIPTS)
                        .contains(Printed.percent(cell.rates().inWindow()) + " %, interval "
                                + Printed.percent(cell.rates().inWindow().low()) + " to "
                                + Printed.percent(cell.rates().inWindow().high()) + " %"));
    }

    @Test
    void theWorstJointsComeFromDifferentFamilies() {
        List<WorstJointsSection.Choice> choices = WorstJointsSection.choose(STUDY.summary);
        assertThat(choices).hasSize(3);
        assertThat(choices.stream().map(WorstJointsSection.Choice::family)).doesNotHaveDuplicates();
        assertThat(choices.stream()
                        .map(c -> STUDY.summary.strategies().get(c.strategy()).name()))
                .doesNotHaveDuplicates();
    }

    @Test
    void whatTheBestMissStandsOnAScaleOfItsOwn() {
        assertThat(WITHOUT_SCRIPTS)
                .contains("% of any family outside the window, as far as these joints can tell")
                .containsPattern(
                        "adaptive estimation \\(all\\): outside the window [0-9.]+ % \\([0-9.]+\u2013[0-9.]+\\)");
    }

    @Test
    void equalStudiesGiveEqualBytes() {
        assertThat(HtmlReport.html(new InventedStudy(500).summary, InventedStudy.facts(), STUDY.worst()))
                .isEqualTo(PAGE);
    }

    @Test
    void whatOtherCommandsFoundStandsOnThePageAndNothingElse() {
        var interval = new org.shutoffbench.harness.statistics.Interval(0.6, 0.8);
        var nothing = new org.shutoffbench.harness.statistics.Interval(0, 0.001);
        var found = new org.shutoffbench.harness.study.failure.SensitivityStudy.Result(
                STUDY.summary.scenario(),
                "hard plain",
                "blow count",
                "clamping torque",
                0.95,
                List.of(
                        new org.shutoffbench.harness.study.failure.SensitivityStudy.Share(
                                "friction", 0.65, interval, 0.7, interval),
                        new org.shutoffbench.harness.study.failure.SensitivityStudy.Share(
                                "idle <source>", 0, nothing, 0, nothing)),
                100,
                0);
        String page = HtmlReport.html(STUDY.summary, InventedStudy.facts(), null, new Findings(found, null));
        assertThat(page)
                .contains("Friction makes most of the scatter of clamping torque with blow count on hard plain")
                .contains("70.0 %, interval 60.0\u201380.0 %")
                .contains("1 more sources, each surely below 0.5 %")
                .doesNotContain("idle <source>")
                .doesNotContain("The weakest joint");
        assertThat(PAGE).doesNotContain("What it hangs on");
    }
}
