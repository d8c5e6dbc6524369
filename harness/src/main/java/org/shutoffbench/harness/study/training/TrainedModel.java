package org.shutoffbench.harness.study.training;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.strategy.BlowFeatures;
import org.shutoffbench.controller.strategy.LearnedRegression;
import org.shutoffbench.controller.strategy.QuadraticModel;
import org.shutoffbench.harness.scenario.SettingsTable;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

/**
 * What training learned, as a file for scenarios and one for firmware.
 *
 * @param made how it was made: short texts by key
 * @param settings learned settings by name
 */
public record TrainedModel(Map<String, String> made, Map<String, Double> settings) {

    private static final int FORMAT = 1;

    public TrainedModel {
        made = Collections.unmodifiableMap(new LinkedHashMap<>(made));
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }

    /** JSON of the shape of a settings table, ending in a line feed; equal models give equal bytes. */
    public String json() {
        StrategyDescriptor strategy = new LearnedRegression.Factory().descriptor();
        Map<String, String> written = new LinkedHashMap<>();
        for (Setting setting : strategy.settings()) {
            Double value = settings.get(setting.name());
            if (value != null) {
                written.put(setting.name(), SettingsTable.written(setting, value));
            }
        }
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("bench_settings", FORMAT);
        file.put("made", made);
        file.put("strategies", Map.of(strategy.name(), written));
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
        return JsonMapper.builder().build().writer().with(printer).writeValueAsString(file) + "\n";
    }

    /** A C header with the same numbers. */
    public String header() {
        StringBuilder text = new StringBuilder();
        text.append("/* Learned regression, format ").append(FORMAT).append(". Made by train; do not edit. */\n");
        made.forEach((key, value) -> text.append("/* ")
                .append(key)
                .append(": ")
                .append(value.replace("*/", "* /"))
                .append(" */\n"));
        text.append("#ifndef LEARNED_REGRESSION_H\n#define LEARNED_REGRESSION_H\n\n");
        text.append("#define LEARNED_FEATURES ").append(BlowFeatures.COUNT).append('\n');
        text.append("#define LEARNED_TERMS ").append(QuadraticModel.TERMS).append("\n\n");
        array(text, "mean", BlowFeatures.COUNT);
        array(text, "scale", BlowFeatures.COUNT);
        array(text, "coefficient", QuadraticModel.TERMS);
        return text.append("#endif\n").toString();
    }

    private void array(StringBuilder text, String name, int length) {
        text.append("static const float learned_")
                .append(name)
                .append('[')
                .append(length)
                .append("] = {\n");
        for (int i = 0; i < length; i++) {
            Double value = settings.get(name + " " + i);
            if (value == null) {
                throw new IllegalStateException(name + " " + i + " was not learned");
            }
            text.append("    ").append(value.floatValue()).append("f,\n");
        }
        text.append("};\n\n");
    }

    /** Memory that the numbers take, bytes. */
    public static int bytes() {
        return Float.BYTES * (2 * BlowFeatures.COUNT + QuadraticModel.TERMS);
    }
}
