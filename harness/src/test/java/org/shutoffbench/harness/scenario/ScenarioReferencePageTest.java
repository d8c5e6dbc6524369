package org.shutoffbench.harness.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.unit.Dimension;

/** The reference page says of every key what the reader holds of it, and its example is a scenario. */
class ScenarioReferencePageTest {

    private static final Path PAGE = Path.of("../docs/scenario.md");

    @Test
    void everyNumberOfAFamilyStandsThereWithUnitRangeAndDefault() throws IOException {
        assertThat(Files.readAllLines(PAGE)).containsAll(familyRows());
    }

    @Test
    void everyNumberOfAToolStandsThereWithUnitAndRange() throws IOException {
        assertThat(Files.readAllLines(PAGE)).containsAll(toolRows());
    }

    @Test
    void everyNumberOfAnAuditStandsThereWithUnitRangeAndDefault() throws IOException {
        List<String> rows = new ArrayList<>();
        for (AuditKey key : AuditKey.values()) {
            rows.add("| `" + key.key() + "` | " + unit(key.dimension()) + " | " + key.range() + " | "
                    + key.byDefault().written() + " | " + key.meaning() + " |");
        }
        assertThat(Files.readAllLines(PAGE)).containsAll(rows);
    }

    @Test
    void everyUnitStandsThere() throws IOException {
        assertThat(Files.readAllLines(PAGE)).containsAll(unitRows());
    }

    @Test
    void everyKeyOfTheWholeFileStandsThere() throws IOException {
        String page = Files.readString(PAGE);
        String resolved = ScenarioFile.resolved(
                new ScenarioFile(new StrategyCatalogue()).parse("wide.yaml", WidePlainScenario.TEXT));
        resolved.lines()
                .filter(line -> line.matches("[a-z][a-z_ ]*:.*"))
                .map(line -> line.substring(0, line.indexOf(':')))
                .forEach(key -> assertThat(page).contains("`" + key.strip() + "`"));
    }

    @Test
    void itsExampleIsAScenario() throws IOException {
        String page = Files.readString(PAGE);
        int from = page.indexOf("```yaml\nbench: 1") + "```yaml\n".length();
        String example = page.substring(from, page.indexOf("```", from));
        assertThat(new ScenarioFile(new StrategyCatalogue())
                        .parse("example.yaml", example)
                        .families())
                .isNotEmpty();
    }

    static List<String> familyRows() {
        List<String> rows = new ArrayList<>();
        for (JointKey key : JointKey.values()) {
            String place = key.section().isEmpty() ? key.key() : key.section() + ": " + key.key();
            String form = switch (key) {
                case MU_B_OVER_MU_TH -> place + ": {mu_th times: ...}";
                case STIFFNESS_OVER_COMPUTED -> place + ": {computed times: ...}";
                default -> place;
            };
            String byDefault = key.byDefault() == null ? "" : key.byDefault();
            rows.add("| `" + form + "` | " + unit(key.dimension()) + " | " + key.range() + " | " + byDefault + " | "
                    + key.meaning() + " |");
        }
        return rows;
    }

    static List<String> toolRows() {
        List<String> rows = new ArrayList<>();
        for (ToolKey key : ToolKey.values()) {
            rows.add("| `" + key.key() + "` | " + unit(key.dimension()) + " | " + key.range() + " | "
                    + ToolRecipe.of("light").number(key).written() + " | "
                    + ToolRecipe.of("heavy").number(key).written() + " | " + key.meaning() + " |");
        }
        return rows;
    }

    static List<String> unitRows() {
        List<String> rows = new ArrayList<>();
        for (Dimension dimension : Dimension.values()) {
            if (!dimension.isPure()) {
                rows.add("| " + dimension.title() + " | `" + String.join("`, `", dimension.units()) + "` |");
            }
        }
        return rows;
    }

    private static String unit(Dimension dimension) {
        return dimension.isPure() ? "number or %" : dimension.siUnit();
    }
}
