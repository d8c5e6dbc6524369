package org.shutoffbench.harness.run;

import static org.shutoffbench.sensor.QuantityBits.ANVIL_ANGLE;
import static org.shutoffbench.sensor.QuantityBits.BLOWS;
import static org.shutoffbench.sensor.QuantityBits.CARRIER_ANGLE;
import static org.shutoffbench.sensor.QuantityBits.CARRIER_SPEED;
import static org.shutoffbench.sensor.QuantityBits.HOUSING_ACCELERATION;
import static org.shutoffbench.sensor.QuantityBits.HOUSING_RATE;
import static org.shutoffbench.sensor.QuantityBits.MOTOR_CURRENT;
import static org.shutoffbench.sensor.QuantityBits.SUPPLY_VOLTAGE;
import static org.shutoffbench.sensor.QuantityBits.TORQUE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.sensor.Quantity;
import org.shutoffbench.sensor.SensorReading;

/**
 * Frames for a group of strategies, one for each different set of channels: nobody sees a channel it did not declare or was
 * not given. A strategy from outside has a frame to itself, so that one that writes into it harms nobody else. This is the
 * one place where joint-model and controllers meet in a tick.
 */
final class Listeners {

    private final SensorFrame[] frames;
    private final int[] maskOf;
    private final int[] frameOf;
    private final Set<Quantity> quantities = EnumSet.noneOf(Quantity.class);

    Listeners(List<Contestant> contestants) {
        List<Integer> masks = new ArrayList<>();
        List<@Nullable Integer> sharedMasks = new ArrayList<>();
        frameOf = new int[contestants.size()];
        for (int s = 0; s < frameOf.length; s++) {
            int mask = 0;
            for (Channel channel : contestants.get(s).listensTo()) {
                Quantity quantity = Quantity.valueOf(channel.name());
                mask |= quantity.bit();
                quantities.add(quantity);
            }
            boolean alone = contestants.get(s).isFromOutside();
            int shared = alone ? -1 : sharedMasks.indexOf(mask);
            frameOf[s] = shared < 0 ? masks.size() : shared;
            if (shared < 0) {
                masks.add(mask);
                sharedMasks.add(alone ? null : mask);
            }
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
        frame.carrierAngleRad = (mask & CARRIER_ANGLE) != 0 ? reading.carrierAngleRad : Float.NaN;
        frame.carrierSpeedRadPerS = (mask & CARRIER_SPEED) != 0 ? reading.carrierSpeedRadPerS : Float.NaN;
        frame.motorCurrentA = (mask & MOTOR_CURRENT) != 0 ? reading.motorCurrentA : Float.NaN;
        frame.supplyRatio = (mask & SUPPLY_VOLTAGE) != 0 ? reading.supplyRatio : Float.NaN;
        frame.housingAccelerationMPerS2 =
                (mask & HOUSING_ACCELERATION) != 0 ? reading.housingAccelerationMPerS2 : Float.NaN;
        frame.blows = (mask & BLOWS) != 0 ? reading.blows : 0;
        frame.anvilAngleRad = (mask & ANVIL_ANGLE) != 0 ? reading.anvilAngleRad : Float.NaN;
        frame.housingRateRadPerS = (mask & HOUSING_RATE) != 0 ? reading.housingRateRadPerS : Float.NaN;
        frame.torqueNm = (mask & TORQUE) != 0 ? reading.torqueNm : Float.NaN;
    }
}
