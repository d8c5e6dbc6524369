package org.shutoffbench.harness.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.report.ChartData.StrategyLook;
import org.shutoffbench.harness.run.TighteningRecord;
import org.shutoffbench.harness.study.StudySummary;

/**
 * A finished study as one HTML file: which strategy on which family, how repeatable, where and why it fails, and what the
 * numbers are. The file loads nothing, needs no network and says what matters without a script.
 */
public final class HtmlReport {

    private static final Templates TEMPLATES = new Templates(HtmlReport.class);

    private HtmlReport() {}

    /**
     * The worst joints to draw.
     *
     * @param stops how every strategy left each of them
     * @param joints draws a joint again
     */
    record WorstJoints(
            List<WorstJointsSection.Choice> choices,
            Map<WorstJointsSection.Place, List<TighteningRecord>> stops,
            JointAtNumber joints) {}

    private record Page(
            String scenario,
            List<String> facts,
            @Nullable String note,
            List<Span> lead,
            String leadNote,
            String confidence,
            @Nullable String settingsKey,
            MatrixView matrix,
            int familyCount,
            List<String> tables,
            List<String> sections,
            String styles,
            String charts,
            String library,
            String script) {}

    /** The page as text; without worst joints that section is left out. */
    static String html(StudySummary summary, RunFacts facts, @Nullable WorstJoints worst) {
        return html(summary, facts, worst, Findings.NONE);
    }

    /** The same with what other commands found. */
    static String html(StudySummary summary, RunFacts facts, @Nullable WorstJoints worst, Findings findings) {
        return html(summary, facts, worst, findings, null);
    }

    /** The same with the audits of the run, where the scenario asks for them. */
    static String html(
            StudySummary summary,
            RunFacts facts,
            @Nullable WorstJoints worst,
            Findings findings,
            VisitsSection.@Nullable Audited audited) {
        Names names = new Names(summary);
        RateTables tables = new RateTables(summary, names);
        List<String> sections = new ArrayList<>();
        MissesSection misses = new MissesSection(summary, names);
        if (misses.present()) {
            sections.add(misses.html(TEMPLATES));
        }
        RepeatabilitySection repeatability = new RepeatabilitySection(summary, names);
        sections.add(repeatability.html(TEMPLATES));
        WorstJointsSection worstJoints = worst == null
                ? null
                : new WorstJointsSection(summary, names, worst.choices(), worst.stops(), worst.joints());
        if (worstJoints != null) {
            sections.add(worstJoints.html(TEMPLATES));
        }
        LevelsSection levels = new LevelsSection(summary, names);
        if (levels.present()) {
            sections.add(levels.html(TEMPLATES));
        }
        if (audited != null) {
            sections.add(new VisitsSection(summary, names, audited).html(TEMPLATES));
        }
        if (findings.present()) {
            sections.add(findings.html(TEMPLATES));
        }
        sections.add(new MethodSection(summary, names, facts).html(TEMPLATES));
        ChartData charts = new ChartData(
                looks(summary, names),
                repeatability.panels(),
                misses.present() ? misses.pictures() : List.of(),
                worstJoints == null ? List.of() : worstJoints.pictures(),
                levels.pictures());
        return TEMPLATES.fill(
                "report",
                new Page(
                        summary.scenario(),
                        facts.line(),
                        facts.note().isBlank() ? null : facts.note(),
                        LeadSentence.of(summary, names),
                        LeadSentence.note(summary, names),
                        Printed.level(summary.methods().confidence()),
                        names.severalSettings() ? MethodSection.settingsKey(summary) : null,
                        MatrixView.of(summary, names),
                        summary.families().size(),
                        List.of(
                                tables.rates().html(TEMPLATES),
                                tables.effort().html(TEMPLATES),
                                tables.comparisons().html(TEMPLATES)),
                        sections,
                        TEMPLATES.text("palette.css") + TEMPLATES.text("report.css"),
                        Templates.json(charts),
                        Templates.chartLibrary(),
                        TEMPLATES.text("chart-tools.js") + TEMPLATES.text("charts.js")));
    }

    private static List<StrategyLook> looks(StudySummary summary, Names names) {
        List<StrategyLook> looks = new ArrayList<>();
        for (int s = 0; s < summary.strategies().size(); s++) {
            looks.add(new StrategyLook(
                    names.strategy(s), summary.strategies().get(s).name(), names.shownWith(s), names.mark(s)));
        }
        return looks;
    }
}
