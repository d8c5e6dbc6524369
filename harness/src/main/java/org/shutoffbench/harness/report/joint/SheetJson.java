package org.shutoffbench.harness.report.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shutoffbench.harness.report.Caution;
import tools.jackson.databind.json.JsonMapper;

/** The sheet as JSON: sections of facts, each with name, symbol, value, unit and source. */
public final class SheetJson {

    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private SheetJson() {}

    /** The whole sheet, full precision, ending in a line feed. */
    public static String of(JointSheet sheet, UnitSystem system) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("joint", sheet.subject().title());
        List<Object> sections = new ArrayList<>();
        for (FactSection section : sheet.sections()) {
            sections.add(section(section, system));
        }
        root.put("sections", sections);
        root.put("caution", Caution.TEXT);
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(root).replace("\r\n", "\n") + "\n";
    }

    private static Map<String, Object> section(FactSection section, UnitSystem system) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("title", section.title());
        List<Object> facts = new ArrayList<>();
        for (Fact fact : section.facts()) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("name", fact.name());
            row.put("symbol", fact.symbol());
            row.put("value", fact.value(system));
            row.put("unit", fact.measure().unit(system));
            row.put("source", fact.source());
            facts.add(row);
        }
        map.put("facts", facts);
        map.put("remarks", section.remarks());
        return map;
    }
}
