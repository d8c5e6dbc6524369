package org.shutoffbench.harness.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.study.Rate;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.study.TuningGap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a page says of a run beyond its summary.
 *
 * @param line short facts for the head of the page, such as "light tool"
 * @param note the scenario's own note, empty for none
 * @param provenance seed, versions, hash and host, as term and text
 * @param tables what is too long for that, such as how settings were tuned
 */
record RunFacts(List<String> line, String note, List<Fact> provenance, List<PlainTable> tables) {

    RunFacts {
        line = List.copyOf(line);
        provenance = List.copyOf(provenance);
        tables = List.copyOf(tables);
    }

    /** A term and its text. */
    record Fact(String term, String text) {}

    static RunFacts of(Scenario scenario, StudySummary summary, Provenance provenance) {
        ShownQuantity shown = ShownQuantity.judged(summary.judge());
        return new RunFacts(
                List.of(
                        scenario.tool().basis() + " tool",
                        "target " + shown.round(summary.judge().target()) + " " + shown.unit + " "
                                + shown.quantity.title() + " \u00b1"
                                + Printed.level(scenario.judgement().window().si()) + " %",
                        joints(summary)),
                scenario.note(),
                provenance.facts(),
                tables(scenario, summary, provenance));
    }

    private static List<PlainTable> tables(Scenario scenario, StudySummary summary, Provenance provenance) {
        List<PlainTable> tables = new ArrayList<>(provenance.tables());
        List<TuningGap> gaps = TuningGap.of(scenario, summary);
        if (!gaps.isEmpty()) {
            Names names = new Names(summary);
            tables.add(new PlainTable(
                    "Table of what settings lose on fresh joints",
                    "In window, % of joints, on the joints that the settings were made on, on validation joints and on the"
                            + " joints of this run, of the families that the settings were made on; intervals in brackets",
                    List.of("Strategy", "made on", "validation", "this run", "loss from made on to this run, points"),
                    gaps.stream()
                            .map(gap -> List.of(
                                    names.strategy(gap.strategy()),
                                    counted(gap.made()),
                                    counted(gap.validated()),
                                    counted(gap.judged()),
                                    Printed.pointsWithBounds(
                                            gap.made().estimate() - gap.judged().estimate(),
                                            gap.loss().low(),
                                            gap.loss().high())))
                            .toList()));
        }
        return tables;
    }

    private static String counted(Rate rate) {
        return Printed.withInterval(rate) + " of " + rate.n();
    }

    private static String joints(StudySummary summary) {
        List<Integer> counts =
                summary.families().stream().map(f -> f.joints()).distinct().toList();
        return counts.size() == 1 ? counts.get(0) + " joints per family" : "joints per family as in the tables";
    }

    /**
     * The provenance file.
     *
     * @param seed root seed of the joints
     * @param facts one for each name at the top of the file that holds no objects of its own
     * @param tables one for each that does, its objects in columns
     */
    record Provenance(long seed, List<Fact> facts, List<PlainTable> tables) {

        private static final JsonMapper JSON = JsonMapper.builder().build();

        /**
         * Reads the file.
         *
         * @throws IOException if it cannot be read or names no seed
         */
        static Provenance read(Path file) throws IOException {
            JsonNode root = JSON.readTree(Files.readString(file));
            if (!root.path("seed").isIntegralNumber()) {
                throw new IOException(file + " names no seed");
            }
            List<Fact> facts = new ArrayList<>();
            List<PlainTable> tables = new ArrayList<>();
            for (var entry : root.properties()) {
                if (entry.getValue().valueStream().anyMatch(JsonNode::isObject)) {
                    tables.add(table(words(entry.getKey()), entry.getValue()));
                } else if (!entry.getValue().isEmpty() || entry.getValue().isValueNode()) {
                    facts.add(new Fact(words(entry.getKey()), text(entry.getValue())));
                }
            }
            return new Provenance(root.path("seed").asLong(), facts, tables);
        }

        /** Objects side by side: their names over the columns, their fields in the rows. */
        private static PlainTable table(String name, JsonNode objects) {
            List<String> heads = new ArrayList<>(List.of(""));
            Set<String> fields = new LinkedHashSet<>();
            for (var object : objects.properties()) {
                heads.add(object.getKey());
                object.getValue().properties().forEach(field -> fields.add(field.getKey()));
            }
            List<List<String>> rows = new ArrayList<>();
            for (String field : fields) {
                List<String> row = new ArrayList<>(List.of(words(field)));
                for (var object : objects.properties()) {
                    row.add(text(object.getValue().path(field)));
                }
                rows.add(row);
            }
            return new PlainTable(
                    "Table of " + name + ": where they come from", "As recorded in run.json", heads, rows);
        }

        private static String text(JsonNode value) {
            List<String> parts = new ArrayList<>();
            if (value.isObject()) {
                value.properties().forEach(e -> parts.add(words(e.getKey()) + " " + text(e.getValue())));
                return String.join(", ", parts);
            }
            if (value.isArray()) {
                value.forEach(element -> parts.add(text(element)));
                return String.join(" ", parts);
            }
            return value.asString();
        }

        /** "jointsPerFamily" becomes "joints per family". */
        private static String words(String key) {
            return key.replaceAll("(\\p{Lower})(\\p{Upper})", "$1 $2").toLowerCase(Locale.ROOT);
        }
    }
}
