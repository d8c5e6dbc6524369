package org.shutoffbench.harness.study.failure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shutoffbench.harness.population.DrawnCase;
import org.shutoffbench.harness.run.Bench;
import org.shutoffbench.harness.scenario.Amount;
import org.shutoffbench.harness.scenario.Grouping;
import org.shutoffbench.harness.scenario.JointAssembly;
import org.shutoffbench.harness.scenario.JointFamily;
import org.shutoffbench.harness.scenario.JointKey;
import org.shutoffbench.harness.scenario.OperatorDraw;
import org.shutoffbench.harness.scenario.Part;
import org.shutoffbench.harness.scenario.PinnedDraws;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.scenario.SensorRecipe;
import org.shutoffbench.harness.scenario.ToolKey;
import org.shutoffbench.harness.scenario.ToolRecipe;
import org.shutoffbench.harness.scenario.unit.Dimension;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.sensor.ChannelSensor;
import org.shutoffbench.sensor.SensorSuite;

/** A scenario of one joint: every number fixed at its drawn value, the noise pinned to that of the joint it came from. */
final class SingleJoint {

    private static final String SUPPLY = "supply";

    private SingleJoint() {}

    /** The scenario that tightens a drawn joint again with one strategy, under the noise of a joint of the family. */
    static Scenario of(Bench bench, int family, int strategy, long seed, int joint, DrawnCase drawn) {
        Scenario scenario = bench.scenario();
        Set<String> leftToOperator = bench.contestants().get(strategy).operatorSettings();
        JointFamily joints = scenario.families().get(family);
        PinnedDraws there = scenario.pinned();
        PinnedDraws pinned = there == null
                ? new PinnedDraws(seed, scenario.name(), joints.name(), joint)
                : new PinnedDraws(there.seed(), there.scenario(), there.family(), there.joint() + joint);
        return new Scenario(
                scenario.name() + " - weakest joint",
                "One joint of " + scenario.name() + ", all its numbers fixed.",
                scenario.judgement(),
                tool(scenario.tool(), drawn),
                withoutErrors(scenario.sensors()),
                fixed(drawn.value(SUPPLY), Dimension.PURE),
                scenario.timeLimitS(),
                List.of(family(joints, drawn)),
                List.of(scenario.strategies().get(strategy)),
                scenario.tables(),
                scenario.calibration(),
                operator(scenario, leftToOperator, drawn),
                Grouping.NONE,
                1,
                scenario.seed(),
                pinned);
    }

    private static JointFamily family(JointFamily family, DrawnCase drawn) {
        Map<Part, Double> presence = new EnumMap<>(Part.class);
        Map<JointKey, Amount> numbers = new EnumMap<>(JointKey.class);
        family.numbers().forEach((key, amount) -> numbers.put(key, fixed(drawn.value(key.title()), key.dimension())));
        family.presence().forEach((part, probability) -> {
            if (drawn.value(JointAssembly.size(part).title()) == JointAssembly.absent(part)) {
                numbers.keySet().removeIf(key -> key.section().equals(part.key()));
            } else {
                presence.put(part, 1.0);
            }
        });
        return new JointFamily(
                family.name(),
                family.thread(),
                family.propertyClass(),
                family.yieldRule(),
                family.assembly(),
                numbers,
                presence,
                family.damageEveryTurn());
    }

    private static ToolRecipe tool(ToolRecipe tool, DrawnCase drawn) {
        Map<ToolKey, Amount> numbers = new EnumMap<>(ToolKey.class);
        for (ToolKey key : tool.numbers().keySet()) {
            numbers.put(key, fixed(drawn.value(key.title()), key.dimension()));
        }
        return new ToolRecipe(tool.basis(), numbers);
    }

    /** What the one strategy leaves to the operator: a scenario does not name what none of its strategies asks for. */
    private static List<OperatorDraw> operator(Scenario scenario, Set<String> settings, DrawnCase drawn) {
        List<OperatorDraw> fixed = new ArrayList<>();
        for (OperatorDraw draw : scenario.operator()) {
            if (!settings.contains(draw.setting())) {
                continue;
            }
            Amount amount = draw.amount() instanceof Amount.Fixed same
                    ? same
                    : new Amount.Fixed(quantity(draw, drawn.value(draw.title())));
            fixed.add(new OperatorDraw(draw.setting(), draw.unit(), draw.siPerUnit(), amount));
        }
        return fixed;
    }

    private static Quantity quantity(OperatorDraw draw, double si) {
        double inUnit = si / draw.siPerUnit();
        return new Quantity(si, draw.unit().equals("1") ? Double.toString(inUnit) : inUnit + " " + draw.unit());
    }

    private static SensorRecipe withoutErrors(SensorRecipe recipe) {
        SensorSuite suite = recipe.suite();
        for (var entry : recipe.suite().channels().entrySet()) {
            suite = suite.with(entry.getKey(), withoutErrors(entry.getValue()));
        }
        return new SensorRecipe(recipe.basis(), suite);
    }

    private static ChannelSensor withoutErrors(ChannelSensor sensor) {
        return new ChannelSensor(
                sensor.rateHz(),
                sensor.latencyNs(),
                sensor.lowPass(),
                sensor.resolution(),
                sensor.minimum(),
                sensor.maximum(),
                0,
                0,
                sensor.noise(),
                sensor.faults());
    }

    private static Amount fixed(double si, Dimension dimension) {
        return new Amount.Fixed(Quantity.ofSi(si, dimension));
    }
}
