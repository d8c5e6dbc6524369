package org.shutoffbench.harness.population;

import java.util.Map;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.sensor.SensorErrors;
import org.shutoffbench.tool.ImpactTool;

/**
 * One drawn joint with the tool and the person that tighten it.
 *
 * @param family index of the family
 * @param joint joint number within the family
 * @param lot index of its lot
 * @param piece index of its piece, over all lots
 * @param repeat how often the piece was tightened before
 * @param tool index of its tool
 * @param law what the nut resists with
 * @param impactTool the tool
 * @param supplyRatio battery voltage over nominal
 * @param sensorErrors gain and offset errors of the tool's sensors
 * @param operator settings drawn of the operator, by setting, in the unit that strategies declare
 * @param noiseKey key of all noise of the run
 * @param values everything drawn or fixed, by name and in SI: {@code prevailing torque}, {@code tool k_s}; a part that this
 *     joint lacks has torque 0
 */
public record DrawnCase(
        int family,
        int joint,
        int lot,
        int piece,
        int repeat,
        int tool,
        JointLaw law,
        ImpactTool impactTool,
        double supplyRatio,
        SensorErrors sensorErrors,
        Map<String, Double> operator,
        long noiseKey,
        Map<String, Double> values) {

    /** A drawn number by name, in SI. */
    public double value(String name) {
        Double value = values.get(name);
        if (value == null) {
            throw new IllegalArgumentException("nothing drawn is called \"" + name + "\"");
        }
        return value;
    }
}
