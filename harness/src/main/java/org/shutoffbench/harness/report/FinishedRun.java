package org.shutoffbench.harness.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.audit.AuditCount;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.record.OutcomesFile;
import org.shutoffbench.harness.record.RunFolder;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.WorstJointsSection.Choice;
import org.shutoffbench.harness.report.WorstJointsSection.Place;
import org.shutoffbench.harness.scenario.AuditRecipe;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ScenarioFile;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.study.SummaryFile;

/**
 * A finished run's folder as the page reads it: summary, provenance, the resolved scenario, and the rows of the joints that
 * are drawn. The page depends on nothing else, so it can be written again at any time.
 */
public final class FinishedRun {

    private final Path folder;
    private final StudySummary summary;
    private final RunFacts facts;
    private final Population population;

    private FinishedRun(Path folder, StudySummary summary, RunFacts facts, Population population) {
        this.folder = folder;
        this.summary = summary;
        this.facts = facts;
        this.population = population;
    }

    /**
     * Reads a folder.
     *
     * @param scenarios reads the resolved scenario in it
     * @throws IOException if the folder holds no finished run
     */
    public static FinishedRun open(Path folder, ScenarioFile scenarios) throws IOException {
        for (String name : List.of(RunFolder.SUMMARY, RunFolder.PROVENANCE, RunFolder.SCENARIO, RunFolder.OUTCOMES)) {
            if (!Files.isRegularFile(folder.resolve(name))) {
                throw new IOException(folder + " holds no finished run: " + name + " is missing");
            }
        }
        Scenario scenario = scenarios.read(folder.resolve(RunFolder.SCENARIO));
        StudySummary summary = SummaryFile.read(folder.resolve(RunFolder.SUMMARY));
        RunFacts.Provenance provenance = RunFacts.Provenance.read(folder.resolve(RunFolder.PROVENANCE));
        return new FinishedRun(
                folder,
                summary,
                RunFacts.of(scenario, summary, provenance),
                new Population(scenario, provenance.seed()));
    }

    /**
     * Writes the page into the folder.
     *
     * @return the page's file
     * @throws IOException if a file cannot be read or written
     */
    public Path writeReport() throws IOException {
        Path page = folder.resolve(RunFolder.REPORT);
        TextFile.write(page, HtmlReport.html(summary, facts, worst(), Findings.read(folder, summary), audited()));
        return page;
    }

    /** Every row audited; null where the scenario has nobody audit. */
    private VisitsSection.@Nullable Audited audited() throws IOException {
        AuditRecipe recipe = population.scenario().audit();
        if (recipe == null) {
            return null;
        }
        AuditCount count =
                new AuditCount(population, recipe, summary.strategies().size());
        OutcomesFile.read(folder.resolve(RunFolder.OUTCOMES), summary.outcomesFormat(), count::add);
        return new VisitsSection.Audited(population.scenario(), count);
    }

    private HtmlReport.@Nullable WorstJoints worst() throws IOException {
        List<Choice> choices = WorstJointsSection.choose(summary);
        if (choices.isEmpty()) {
            return null;
        }
        Set<Place> places =
                choices.stream().map(c -> new Place(c.family(), c.joint())).collect(Collectors.toSet());
        return new HtmlReport.WorstJoints(
                choices,
                JointStops.read(folder.resolve(RunFolder.OUTCOMES), summary, places),
                (family, joint) -> population.draw(family, joint).law());
    }
}
