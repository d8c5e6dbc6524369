package org.shutoffbench.sensor;

/** Bits of all quantities in a mask as constants, for code that asks at every sample. */
public final class QuantityBits {

    public static final int CARRIER_ANGLE = Quantity.CARRIER_ANGLE.bit();
    public static final int CARRIER_SPEED = Quantity.CARRIER_SPEED.bit();
    public static final int MOTOR_CURRENT = Quantity.MOTOR_CURRENT.bit();
    public static final int SUPPLY_VOLTAGE = Quantity.SUPPLY_VOLTAGE.bit();
    public static final int HOUSING_ACCELERATION = Quantity.HOUSING_ACCELERATION.bit();
    public static final int BLOWS = Quantity.BLOWS.bit();
    public static final int ANVIL_ANGLE = Quantity.ANVIL_ANGLE.bit();
    public static final int HOUSING_RATE = Quantity.HOUSING_RATE.bit();
    public static final int TORQUE = Quantity.TORQUE.bit();

    private QuantityBits() {}
}
