package org.shutoffbench.harness.scenario;

import java.util.EnumMap;
import java.util.Map;
import org.shutoffbench.harness.scenario.file.Section;
import org.shutoffbench.harness.scenario.file.Tree;

/** Reads the tool: the name of a reference tool, or one with single values replaced. */
final class ToolReader {

    private final Section root;

    ToolReader(Section root) {
        this.root = root;
    }

    ToolRecipe read() {
        if (!(root.take("tool") instanceof Tree.Branch branch)) {
            return ToolRecipe.of(root.choice("tool", ToolRecipe.REFERENCE.keySet(), "light"));
        }
        Section tool = new Section(branch, root.path("tool"), root.problems());
        String basis = tool.choice("based on", ToolRecipe.REFERENCE.keySet(), "light");
        if (!tool.has("based on")) {
            tool.missing("based on", "name the tool whose other values it has: light or heavy");
        }
        Map<ToolKey, Amount> numbers = new EnumMap<>(ToolKey.class);
        for (ToolKey key : ToolKey.values()) {
            Amount amount = new AmountReader(key.dimension(), key.range(), ToolKey.LEVELS, root.problems())
                    .read(tool, key.key());
            if (amount != null) {
                numbers.put(key, amount);
            }
        }
        lugs(tool, numbers);
        groove(tool, new ToolRecipe(basis, numbers));
        tool.finish();
        return new ToolRecipe(basis, numbers);
    }

    private static void lugs(Section tool, Map<ToolKey, Amount> numbers) {
        Amount lugs = numbers.get(ToolKey.N_L);
        if (lugs != null && !(lugs instanceof Amount.Fixed && lugs.median() == Math.rint(lugs.median()))) {
            tool.problem(ToolKey.N_L.key(), "a whole number of lugs belongs here");
        }
    }

    private static void groove(Section tool, ToolRecipe recipe) {
        Amount liftOff = recipe.number(ToolKey.DELTA_DIS);
        Amount end = recipe.number(ToolKey.DELTA_MAX);
        if (!(liftOff.highest() < end.lowest())) {
            String key = tool.has(ToolKey.DELTA_DIS.key()) ? ToolKey.DELTA_DIS.key() : ToolKey.DELTA_MAX.key();
            tool.problem(key, "the hammer must lift off (delta_dis) before the groove ends (delta_max)");
        }
    }
}
