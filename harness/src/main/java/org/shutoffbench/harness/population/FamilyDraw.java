package org.shutoffbench.harness.population;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shutoffbench.draw.Stream;
import org.shutoffbench.harness.scenario.JointAssembly;
import org.shutoffbench.harness.scenario.JointFamily;
import org.shutoffbench.harness.scenario.JointKey;
import org.shutoffbench.harness.scenario.Level;
import org.shutoffbench.harness.scenario.OperatorDraw;
import org.shutoffbench.harness.scenario.Part;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.ToolKey;
import org.shutoffbench.harness.scenario.ToolRecipe;
import org.shutoffbench.tool.ImpactTool;

/** Draws the joints of one family. */
final class FamilyDraw {

    private static final String SUPPLY = "supply";

    private final JointFamily family;
    private final Map<JointKey, DrawnAmount> joint = new EnumMap<>(JointKey.class);
    private final Map<Part, ScatterSource> parts = new EnumMap<>(Part.class);
    private final Map<ToolKey, DrawnAmount> tool = new EnumMap<>(ToolKey.class);
    private final Map<OperatorDraw, DrawnAmount> operator = new LinkedHashMap<>();
    private final DrawnAmount supply;
    private final SensorErrorDraw sensors;

    FamilyDraw(Scenario scenario, JointFamily family) {
        this.family = family;
        this.sensors = new SensorErrorDraw(scenario.sensors().suite());
        family.numbers()
                .forEach((key, amount) ->
                        joint.put(key, new DrawnAmount(ScatterSource.Group.JOINT, key.title(), amount)));
        family.presence().forEach((part, probability) -> {
            if (probability < 1) {
                parts.put(part, ScatterSource.of(ScatterSource.Group.JOINT, part.title(), Stream.PIECE, Level.PIECE));
            }
        });
        scenario.tool()
                .numbers()
                .forEach(
                        (key, amount) -> tool.put(key, new DrawnAmount(ScatterSource.Group.TOOL, key.title(), amount)));
        scenario.operator()
                .forEach(draw ->
                        operator.put(draw, new DrawnAmount(ScatterSource.Group.OPERATOR, draw.title(), draw.amount())));
        supply = new DrawnAmount(ScatterSource.Group.SUPPLY, SUPPLY, scenario.supply());
    }

    List<ScatterSource> sources() {
        Set<ScatterSource> sources = new LinkedHashSet<>();
        joint.values().forEach(amount -> sources.addAll(amount.sources()));
        sources.addAll(parts.values());
        tool.values().forEach(amount -> sources.addAll(amount.sources()));
        sources.addAll(sensors.sources());
        sources.addAll(supply.sources());
        operator.values().forEach(amount -> sources.addAll(amount.sources()));
        return new ArrayList<>(sources);
    }

    DrawnCase draw(int familyIndex, int number, Population.Indices at, DrawSource source) {
        Map<String, Double> values = new LinkedHashMap<>();
        try {
            Map<JointKey, Double> drawn = joint(source);
            drawn.forEach((key, value) -> values.put(key.title(), value));
            JointAssembly assembly = new JointAssembly(family, drawn, at.repeat());
            values.computeIfPresent(
                    JointKey.PREVAILING_TORQUE.title(), (name, whenNew) -> assembly.prevailingTorqueNm());
            ImpactTool impactTool = tool(source, values);
            double supplyRatio = supply.value(source);
            values.put(SUPPLY, supplyRatio);
            Map<String, Double> settings = operator(source, values);
            return new DrawnCase(
                    familyIndex,
                    number,
                    at.lot(),
                    at.piece(),
                    at.repeat(),
                    at.tool(),
                    assembly.law(),
                    impactTool,
                    supplyRatio,
                    sensors.draw(source, values),
                    settings,
                    source.noiseKey(),
                    Collections.unmodifiableMap(values));
        } catch (IllegalArgumentException e) {
            throw new ImpossibleJointException(family.name(), number, String.valueOf(e.getMessage()));
        }
    }

    /** Every number of the joint; a part that it lacks has none. */
    private Map<JointKey, Double> joint(DrawSource source) {
        Map<JointKey, Double> drawn = new EnumMap<>(JointKey.class);
        joint.forEach((key, amount) -> {
            double value = amount.value(source);
            if (!key.range().holds(value)) {
                throw new IllegalArgumentException(
                        "drew " + key.title() + " " + value + " in SI; allowed: " + key.range());
            }
            drawn.put(key, value);
        });
        family.presence().forEach((part, probability) -> {
            ScatterSource presence = parts.get(part);
            if (presence != null && source.uniform(presence) < 1 - probability) {
                drawn.put(JointAssembly.size(part), JointAssembly.absent(part));
            }
        });
        return drawn;
    }

    private ImpactTool tool(DrawSource source, Map<String, Double> values) {
        return ToolRecipe.tool(key -> {
            DrawnAmount amount = tool.get(key);
            double value = amount == null ? Double.NaN : amount.value(source);
            values.put(key.title(), value);
            return value;
        });
    }

    private Map<String, Double> operator(DrawSource source, Map<String, Double> values) {
        Map<String, Double> settings = new LinkedHashMap<>();
        operator.forEach((draw, amount) -> {
            double value = amount.value(source);
            values.put(draw.title(), value);
            settings.put(draw.setting(), value / draw.siPerUnit());
        });
        return Collections.unmodifiableMap(settings);
    }
}
