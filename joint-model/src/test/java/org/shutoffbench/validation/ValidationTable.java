package org.shutoffbench.validation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ServiceLoader;

/** Every check of every {@link ReferenceSource} on the class path as a Markdown page. */
public final class ValidationTable {

    private static final String HEAD = """
            # Validation

            Published values beside ours, then experiments that take longer than a build should. The tests make the tables of
            values: `mvn verify` fails where they differ from what the code computes, and `mvn -Pvalidation -pl harness -am test
            -Dtest=ValidationReportTest -Dsurefire.failIfNoSpecifiedTests=false` writes them anew. Tolerance and its reason stand in the header of each
            reference file, under `src/test/resources/reference/` of the module; source keys are those of
            [references.md](references.md). *Memory* means that the source itself was not read.

            """;

    private final Map<String, List<Check>> byTopic = new LinkedHashMap<>();

    private ValidationTable() {}

    /** The checks of all sources, in the order in which the sources are named. */
    public static ValidationTable collect() {
        ValidationTable table = new ValidationTable();
        for (ReferenceSource source : ServiceLoader.load(ReferenceSource.class)) {
            for (Check check : source.checks()) {
                table.byTopic
                        .computeIfAbsent(check.topic(), t -> new ArrayList<>())
                        .add(check);
            }
        }
        return table;
    }

    public List<Check> checks() {
        return byTopic.values().stream().flatMap(List::stream).toList();
    }

    /** The page, ending in a line feed. */
    public String markdown() {
        StringBuilder page = new StringBuilder(HEAD);
        page.append(checks().size())
                .append(" values in ")
                .append(byTopic.size())
                .append(" topics.\n");
        byTopic.entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(topic -> {
            page.append("\n## ").append(topic.getKey()).append("\n\n");
            page.append("| quantity | unit | published | ours | difference | tolerance | source |\n");
            page.append("|---|---|---:|---:|---:|---|---|\n");
            topic.getValue().forEach(check -> page.append(row(check)));
        });
        return page.toString();
    }

    private static String row(Check check) {
        return String.join(
                        " | ",
                        "| " + check.what(),
                        check.unit(),
                        check.printed(),
                        significant(check.ours()),
                        difference(check),
                        check.tolerance().text(),
                        check.source())
                + " |\n";
    }

    private static String difference(Check check) {
        if (check.published() == 0) {
            return "";
        }
        String percent = String.format(Locale.ROOT, "%+.3f %%", 100 * (check.ours() / check.published() - 1));
        return percent.matches("[+-]0\\.000 %") ? "0 %" : percent;
    }

    /** Six significant digits without trailing zeros. */
    private static String significant(double value) {
        return new java.math.BigDecimal(value, new java.math.MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
