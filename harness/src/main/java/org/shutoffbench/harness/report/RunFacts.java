package org.shutoffbench.harness.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.study.StudySummary;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a page says of a run beyond its summary.
 *
 * @param line short facts for the head of the page, such as "light tool"
 * @param note the scenario's own note, empty for none
 * @param provenance seed, versions, hash and host, as term and text
 */
record RunFacts(List<String> line, String note, List<Fact> provenance) {

    RunFacts {
        line = List.copyOf(line);
        provenance = List.copyOf(provenance);
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
                provenance.facts());
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
     * @param facts one for each name at the top of the file
     */
    record Provenance(long seed, List<Fact> facts) {

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
            for (var entry : root.properties()) {
                if (!entry.getValue().isEmpty() || entry.getValue().isValueNode()) {
                    facts.add(new Fact(words(entry.getKey()), text(entry.getValue())));
                }
            }
            return new Provenance(root.path("seed").asLong(), facts);
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
