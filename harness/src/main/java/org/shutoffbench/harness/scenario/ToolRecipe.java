package org.shutoffbench.harness.scenario;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.shutoffbench.harness.scenario.unit.Quantity;
import org.shutoffbench.tool.Cam;
import org.shutoffbench.tool.Hammer;
import org.shutoffbench.tool.Housing;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.Motor;
import org.shutoffbench.tool.ReferenceTools;
import org.shutoffbench.tool.Socket;

/**
 * A tool with all of its numbers, fixed or scattering.
 *
 * @param basis name of the reference tool that it was made from
 * @param numbers one for every key
 */
public record ToolRecipe(String basis, Map<ToolKey, Amount> numbers) {

    /** Reference tools by name. */
    public static final Map<String, ImpactTool> REFERENCE = Collections.unmodifiableMap(
            new java.util.TreeMap<>(Map.of("light", ReferenceTools.LIGHT, "heavy", ReferenceTools.HEAVY)));

    public ToolRecipe {
        EnumMap<ToolKey, Amount> complete = new EnumMap<>(numbersOf(basis));
        complete.putAll(numbers);
        numbers = Collections.unmodifiableMap(complete);
    }

    /** A reference tool as it is. */
    public static ToolRecipe of(String basis) {
        return new ToolRecipe(basis, Map.of());
    }

    private static Map<ToolKey, Amount> numbersOf(String basis) {
        ImpactTool tool = REFERENCE.get(basis);
        if (tool == null) {
            throw new IllegalArgumentException("no reference tool is called \"" + basis + "\"");
        }
        Map<ToolKey, Amount> numbers = new EnumMap<>(ToolKey.class);
        for (ToolKey key : ToolKey.values()) {
            numbers.put(key, new Amount.Fixed(Quantity.ofSi(number(tool, key), key.dimension())));
        }
        return numbers;
    }

    /** The number of a key. */
    public Amount number(ToolKey key) {
        Amount amount = numbers.get(key);
        if (amount == null) {
            throw new IllegalStateException("every tool has " + key);
        }
        return amount;
    }

    /** The tool that has these numbers. */
    public static ImpactTool tool(ToDoubleFunction<ToolKey> value) {
        return new ImpactTool(
                new Motor(
                        value.applyAsDouble(ToolKey.J_M),
                        value.applyAsDouble(ToolKey.T_ST),
                        value.applyAsDouble(ToolKey.T_LIM),
                        value.applyAsDouble(ToolKey.OMEGA_0),
                        value.applyAsDouble(ToolKey.T_D)),
                new Cam(
                        value.applyAsDouble(ToolKey.T_0),
                        value.applyAsDouble(ToolKey.K_C),
                        value.applyAsDouble(ToolKey.C_C),
                        value.applyAsDouble(ToolKey.DELTA_0),
                        value.applyAsDouble(ToolKey.DELTA_DIS),
                        value.applyAsDouble(ToolKey.DELTA_MAX),
                        value.applyAsDouble(ToolKey.K_G),
                        value.applyAsDouble(ToolKey.C_G)),
                new Hammer(
                        value.applyAsDouble(ToolKey.J_H),
                        (int) value.applyAsDouble(ToolKey.N_L),
                        value.applyAsDouble(ToolKey.K_L),
                        value.applyAsDouble(ToolKey.C_L)),
                new Socket(
                        value.applyAsDouble(ToolKey.J_A),
                        value.applyAsDouble(ToolKey.J_N),
                        value.applyAsDouble(ToolKey.K_S),
                        value.applyAsDouble(ToolKey.C_S)),
                new Housing(
                        value.applyAsDouble(ToolKey.J_B),
                        value.applyAsDouble(ToolKey.C_B),
                        value.applyAsDouble(ToolKey.K_B)));
    }

    private static double number(ImpactTool tool, ToolKey key) {
        return switch (key) {
            case J_M -> tool.motor().inertiaKgM2();
            case T_ST -> tool.motor().stallTorqueNm();
            case T_LIM -> tool.motor().torqueLimitNm();
            case OMEGA_0 -> tool.motor().noLoadSpeedRadPerS();
            case T_D -> tool.motor().dragTorqueNm();
            case T_0 -> tool.cam().preloadTorqueNm();
            case K_C -> tool.cam().stiffnessNmPerRad();
            case C_C -> tool.cam().dampingNmSPerRad();
            case DELTA_0 -> tool.cam().seatAngleRad();
            case DELTA_DIS -> tool.cam().liftOffAngleRad();
            case DELTA_MAX -> tool.cam().grooveEndRad();
            case K_G -> tool.cam().grooveStiffnessNmPerRad();
            case C_G -> tool.cam().grooveDampingNmSPerRad();
            case J_H -> tool.hammer().inertiaKgM2();
            case N_L -> tool.hammer().lugsPerTurn();
            case K_L -> tool.hammer().lugStiffnessNmPerRad();
            case C_L -> tool.hammer().lugDampingNmSPerRad();
            case J_A -> tool.socket().anvilInertiaKgM2();
            case J_N -> tool.socket().nutInertiaKgM2();
            case K_S -> tool.socket().stiffnessNmPerRad();
            case C_S -> tool.socket().dampingNmSPerRad();
            case J_B -> tool.housing().inertiaKgM2();
            case C_B -> tool.housing().dampingNmSPerRad();
            case K_B -> tool.housing().stiffnessNmPerRad();
        };
    }
}
