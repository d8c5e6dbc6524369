package org.shutoffbench.harness.study.calibrate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.strategy.LearnedRegression;
import org.shutoffbench.controller.strategy.Strategies;
import org.shutoffbench.harness.scenario.SettingsTable;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.json.JsonMapper;

/** A calibration as a JSON file of the shape of a settings table, so that a scenario can name it. */
public final class CalibrationFile {

    private static final String LEARNED_BY_TRAINING =
            new LearnedRegression.Factory().descriptor().name();

    private CalibrationFile() {}

    /** Our strategies but learned regression, which learns a tool by training: its energies are a mere scale. */
    static List<StrategyDescriptor> strategies() {
        return Strategies.byName().values().stream()
                .map(StrategyFactory::descriptor)
                .filter(strategy -> !strategy.name().equals(LEARNED_BY_TRAINING))
                .toList();
    }

    /**
     * The text of the file, ending in a line feed; equal calibrations give equal bytes.
     *
     * @param tool name of the tool
     * @param joints on which it was struck
     * @throws IllegalArgumentException for a value outside the range of its setting
     */
    public static String text(String tool, int joints, Calibration calibration, CalibrationCheck check) {
        Map<String, String> made = new LinkedHashMap<>();
        made.put("by", "calibrate");
        made.put("tool", tool);
        made.put("joints", joints + " plain joints of 60 to 400 kN/mm");
        made.put("fresh joints", check.joints() + ", " + check.blows() + " blows");
        made.put("blow energy off by", percent(check.blowEnergyError()));
        made.put("transmission off by", percent(check.transmissionError()));
        made.put("transmission below 15 N*m off by", percent(check.lowTorqueTransmissionError()));
        Map<String, Object> learned = new LinkedHashMap<>();
        for (StrategyDescriptor strategy : strategies()) {
            Map<String, String> written = written(strategy, calibration);
            if (!written.isEmpty()) {
                learned.put(strategy.name(), written);
            }
        }
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("bench_settings", 1);
        file.put("made", made);
        file.put("strategies", learned);
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter().withObjectIndenter(lines);
        return JsonMapper.builder().build().writer().with(printer).writeValueAsString(file) + "\n";
    }

    private static Map<String, String> written(StrategyDescriptor strategy, Calibration calibration) {
        Map<String, String> written = new LinkedHashMap<>();
        for (Setting setting : strategy.settings()) {
            Double value = calibration.settings().get(setting.name());
            if (setting.role() == Setting.Role.LEARNED && value != null) {
                if (!(setting.minimum() <= value && value <= setting.maximum())) {
                    throw new IllegalArgumentException(
                            "\"" + setting.name() + "\" would be " + value + ", outside its range");
                }
                written.put(setting.name(), SettingsTable.written(setting, value));
            }
        }
        return written;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f %% (root mean square over blows)", 100 * share);
    }
}
