package org.shutoffbench.harness.record.export;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Checks a CSV file against a table schema: header, types, constraints and key as the Frictionless Table Schema
 * specification (v1) defines them, for the types and constraints that occur here; any other is an error of the schema.
 */
final class SchemaCheck {

    private final JsonNode schema;

    SchemaCheck(String schema) {
        this.schema = JsonMapper.builder().build().readTree(schema);
    }

    /** What is wrong; empty where nothing is. */
    List<String> problems(Path file) throws IOException {
        List<String> problems = new ArrayList<>();
        Set<List<String>> keys = new HashSet<>();
        List<JsonNode> fields = List.copyOf(schema.path("fields").values());
        try (CsvReader<CsvRecord> csv = CsvReader.builder().ofCsvRecord(file)) {
            for (CsvRecord row : csv) {
                if (row.getStartingLineNumber() == 1) {
                    List<String> names =
                            fields.stream().map(f -> f.path("name").asString()).toList();
                    if (!row.getFields().equals(names)) {
                        problems.add("header " + row.getFields());
                    }
                    continue;
                }
                for (int i = 0; i < fields.size(); i++) {
                    String wrong = wrong(fields.get(i), row.getField(i));
                    if (!wrong.isEmpty()) {
                        problems.add("line " + row.getStartingLineNumber() + ", "
                                + fields.get(i).path("name").asString() + ": " + wrong);
                    }
                }
                if (schema.has("primaryKey") && !keys.add(key(fields, row))) {
                    problems.add("line " + row.getStartingLineNumber() + ": key occurs twice");
                }
            }
        }
        return problems;
    }

    private List<String> key(List<JsonNode> fields, CsvRecord row) {
        List<String> key = new ArrayList<>();
        for (JsonNode name : schema.path("primaryKey").values()) {
            for (int i = 0; i < fields.size(); i++) {
                if (fields.get(i).path("name").equals(name)) {
                    key.add(row.getField(i));
                }
            }
        }
        return key;
    }

    private String wrong(JsonNode field, String value) {
        JsonNode constraints = field.path("constraints");
        for (JsonNode missing : schema.path("missingValues").values()) {
            if (missing.asString().equals(value)) {
                return constraints.path("required").asBoolean(false) ? "required" : "";
            }
        }
        for (String name : constraints.propertyNames()) {
            if (!Set.of("required", "minimum", "enum").contains(name)) {
                return "unknown constraint " + name;
            }
        }
        boolean typed = switch (field.path("type").asString()) {
            case "string" -> true;
            case "integer" -> value.matches("[+-]?\\d+");
            case "number" -> value.matches("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?|NaN|-?INF");
            default -> false;
        };
        if (!typed) {
            return "not of type " + field.path("type").asString();
        }
        if (constraints.has("minimum")
                && Double.parseDouble(value) < constraints.path("minimum").asDouble()) {
            return "below the minimum";
        }
        if (constraints.has("enum")
                && constraints.path("enum").values().stream()
                        .noneMatch(e -> e.asString().equals(value))) {
            return "not in the enumeration";
        }
        return "";
    }
}
