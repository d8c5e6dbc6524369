package org.shutoffbench.harness.scenario;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which joints, which tool, which sensors, which strategies, how many: everything that a result depends on but the root
 * seed and the number of joints a command may replace.
 *
 * @param name part of the key of every draw
 * @param note free text for people; empty for none
 * @param judgement what counts as reached
 * @param tool the tool
 * @param sensors what it senses with
 * @param supply battery voltage over nominal, constant in a run
 * @param timeLimitS a run ends after this time, s
 * @param families in the order of the file
 * @param strategies in the order of the file, one for each of its settings
 * @param tables settings tables by name
 * @param calibration what was learned of the tool, for strategies whose settings it names; null for none
 * @param operator what is drawn of the person at the tool
 * @param grouping which joints share lots, pieces and tools
 * @param jointsPerFamily number of joints unless a command says otherwise
 * @param seed root seed unless a command says otherwise
 * @param audit how joints are checked by hand; null where nobody is asked to
 * @param costs what time and mistakes cost; null where that is not told
 * @param pinned draws taken from another population; null for its own
 */
public record Scenario(
        String name,
        String note,
        Judgement judgement,
        ToolRecipe tool,
        SensorRecipe sensors,
        Amount supply,
        double timeLimitS,
        List<JointFamily> families,
        List<StrategyEntry> strategies,
        Map<String, SettingsTable> tables,
        @Nullable SettingsTable calibration,
        List<OperatorDraw> operator,
        Grouping grouping,
        int jointsPerFamily,
        long seed,
        @Nullable AuditRecipe audit,
        @Nullable Costs costs,
        @Nullable PinnedDraws pinned) {

    /** Most joints per family in one run. */
    public static final int MOST_JOINTS = 100_000_000;

    public Scenario {
        families = List.copyOf(families);
        strategies = List.copyOf(strategies);
        tables = Collections.unmodifiableMap(new LinkedHashMap<>(tables));
        operator = List.copyOf(operator);
    }

    /** A scenario in which nobody audits. */
    public Scenario(
            String name,
            String note,
            Judgement judgement,
            ToolRecipe tool,
            SensorRecipe sensors,
            Amount supply,
            double timeLimitS,
            List<JointFamily> families,
            List<StrategyEntry> strategies,
            Map<String, SettingsTable> tables,
            @Nullable SettingsTable calibration,
            List<OperatorDraw> operator,
            Grouping grouping,
            int jointsPerFamily,
            long seed,
            @Nullable PinnedDraws pinned) {
        this(
                name,
                note,
                judgement,
                tool,
                sensors,
                supply,
                timeLimitS,
                families,
                strategies,
                tables,
                calibration,
                operator,
                grouping,
                jointsPerFamily,
                seed,
                null,
                null,
                pinned);
    }

    /** The same with other strategies. */
    Scenario with(List<StrategyEntry> others) {
        return with(families, others);
    }

    /** The same with other families. */
    public Scenario withFamilies(List<JointFamily> others) {
        return with(others, strategies);
    }

    private Scenario with(List<JointFamily> otherFamilies, List<StrategyEntry> otherStrategies) {
        return new Scenario(
                name,
                note,
                judgement,
                tool,
                sensors,
                supply,
                timeLimitS,
                otherFamilies,
                otherStrategies,
                tables,
                calibration,
                operator,
                grouping,
                jointsPerFamily,
                seed,
                audit,
                costs,
                pinned);
    }

    /** Index of a family by name; -1 where there is none. */
    public int familyIndex(String family) {
        for (int i = 0; i < families.size(); i++) {
            if (families.get(i).name().equals(family)) {
                return i;
            }
        }
        return -1;
    }
}
