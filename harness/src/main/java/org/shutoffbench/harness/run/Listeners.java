package org.shutoffbench.harness.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorReading;

/**
 * Frames for a group of strategies, one for each different set of channels: nobody sees a channel it did not declare or was
 * not given. This is the one place where joint-model and controllers meet in a tick.
 */
final class Listeners {

    private final SensorFrame[] frames;
    private final int[] maskOf;
    private final int[] frameOf;
    private final Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);

    Listeners(List<Contestant> contestants) {
        List<Integer> masks = new ArrayList<>();
        frameOf = new int[contestants.size()];
        for (int s = 0; s < frameOf.length; s++) {
            int mask = 0;
            for (Channel channel : contestants.get(s).listensTo()) {
                Quantity quantity = Quantity.valueOf(channel.name());
                mask |= quantity.bit();
                quantities.add(quantity);
            }
            if (!masks.contains(mask)) {
                masks.add(mask);
            }
            frameOf[s] = masks.indexOf(mask);
        }
        maskOf = masks.stream().mapToInt(Integer::intValue).toArray();
        frames = new SensorFrame[maskOf.length];
        Arrays.setAll(frames, f -> new SensorFrame());
    }

    /** Mask of everything that anybody listens to. */
    int mask() {
        return Quantity.mask(quantities);
    }

    /** The frame that a strategy sees. */
    SensorFrame frame(int strategy) {
        return frames[frameOf[strategy]];
    }

    void hear(SensorReading reading) {
        for (int f = 0; f < frames.length; f++) {
            fill(frames[f], maskOf[f], reading);
        }
    }

    private static void fill(SensorFrame frame, int mask, SensorReading reading) {
        frame.carrierAngleRad = has(mask, Quantity.CARRIER_ANGLE) ? reading.carrierAngleRad : Float.NaN;
        frame.carrierSpeedRadPerS = has(mask, Quantity.CARRIER_SPEED) ? reading.carrierSpeedRadPerS : Float.NaN;
        frame.motorCurrentA = has(mask, Quantity.MOTOR_CURRENT) ? reading.motorCurrentA : Float.NaN;
        frame.supplyRatio = has(mask, Quantity.SUPPLY_VOLTAGE) ? reading.supplyRatio : Float.NaN;
        frame.housingAccelerationMPerS2 =
                has(mask, Quantity.HOUSING_ACCELERATION) ? reading.housingAccelerationMPerS2 : Float.NaN;
        frame.blows = has(mask, Quantity.BLOWS) ? reading.blows : 0;
        frame.anvilAngleRad = has(mask, Quantity.ANVIL_ANGLE) ? reading.anvilAngleRad : Float.NaN;
        frame.housingRateRadPerS = has(mask, Quantity.HOUSING_RATE) ? reading.housingRateRadPerS : Float.NaN;
        frame.torqueNm = has(mask, Quantity.TORQUE) ? reading.torqueNm : Float.NaN;
    }

    private static boolean has(int mask, Quantity quantity) {
        return (mask & quantity.bit()) != 0;
    }
}
