package org.shutoffbench.harness.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ValidationTable;

/**
 * docs/validation.md says what the tests compute, up to the experiments, which take too long to run with every build; with
 * {@code -Dvalidation=rewrite} the page is written instead and the experiments are left as they stand.
 */
class ValidationReportTest {

    private static final Path PAGE = Path.of("../docs/validation.md");
    private static final String EXPERIMENTS = "\n# Experiments\n";
    private static final Path REFERENCES = Path.of("../docs/references.md");

    private final ValidationTable table = ValidationTable.collect();

    @Test
    void thePageIsWhatTheTestsCompute() throws IOException {
        if (System.getProperty("validation", "check").equals("rewrite")) {
            Files.writeString(PAGE, table.markdown() + experiments());
        }
        assertThat(Files.readString(PAGE)).isEqualTo(table.markdown() + experiments());
    }

    /** The part of the page that the tests do not make. */
    private static String experiments() throws IOException {
        String page = Files.readString(PAGE);
        int from = page.indexOf(EXPERIMENTS);
        assertThat(from).as("place of the experiments").isPositive();
        return page.substring(from);
    }

    @Test
    void everyValueHolds() {
        assertThat(table.checks()).hasSizeGreaterThan(100).allMatch(Check::holds);
    }

    @Test
    void everyQuantityIsNamedOnce() {
        Set<String> names = new HashSet<>();
        for (Check check : table.checks()) {
            assertThat(names.add(check.topic() + ": " + check.what()))
                    .as(check.what())
                    .isTrue();
        }
    }

    /** The source of each value begins with a key of docs/references.md, or says that it was computed. */
    @Test
    void everySourceIsListedInTheReferences() throws IOException {
        List<String> keys = Files.readAllLines(REFERENCES).stream()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| key"))
                .map(line -> line.substring(2, line.indexOf(" |")))
                .toList();
        assertThat(table.checks())
                .allMatch(check -> check.source().startsWith("computed")
                        || keys.stream().anyMatch(key -> check.source().startsWith(key)));
    }
}
