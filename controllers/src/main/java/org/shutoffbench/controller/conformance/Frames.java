package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.SensorFrame;

/** Copies frames, and reads and writes one channel of a frame by name; a blow count is carried as a whole number in a float. */
final class Frames {

    private Frames() {}

    static void copy(SensorFrame from, SensorFrame to) {
        to.carrierAngleRad = from.carrierAngleRad;
        to.carrierSpeedRadPerS = from.carrierSpeedRadPerS;
        to.motorCurrentA = from.motorCurrentA;
        to.supplyRatio = from.supplyRatio;
        to.housingAccelerationMPerS2 = from.housingAccelerationMPerS2;
        to.blows = from.blows;
        to.anvilAngleRad = from.anvilAngleRad;
        to.housingRateRadPerS = from.housingRateRadPerS;
        to.torqueNm = from.torqueNm;
    }

    static float get(SensorFrame frame, Channel channel) {
        return switch (channel) {
            case CARRIER_ANGLE -> frame.carrierAngleRad;
            case CARRIER_SPEED -> frame.carrierSpeedRadPerS;
            case MOTOR_CURRENT -> frame.motorCurrentA;
            case SUPPLY_VOLTAGE -> frame.supplyRatio;
            case HOUSING_ACCELERATION -> frame.housingAccelerationMPerS2;
            case BLOWS -> frame.blows;
            case ANVIL_ANGLE -> frame.anvilAngleRad;
            case HOUSING_RATE -> frame.housingRateRadPerS;
            case TORQUE -> frame.torqueNm;
        };
    }

    /** Writes a channel; NaN becomes 0 blows, an infinite count the greatest or least whole number. */
    static void set(SensorFrame frame, Channel channel, float value) {
        switch (channel) {
            case CARRIER_ANGLE -> frame.carrierAngleRad = value;
            case CARRIER_SPEED -> frame.carrierSpeedRadPerS = value;
            case MOTOR_CURRENT -> frame.motorCurrentA = value;
            case SUPPLY_VOLTAGE -> frame.supplyRatio = value;
            case HOUSING_ACCELERATION -> frame.housingAccelerationMPerS2 = value;
            case BLOWS -> frame.blows = (int) value;
            case ANVIL_ANGLE -> frame.anvilAngleRad = value;
            case HOUSING_RATE -> frame.housingRateRadPerS = value;
            case TORQUE -> frame.torqueNm = value;
        }
    }
}
