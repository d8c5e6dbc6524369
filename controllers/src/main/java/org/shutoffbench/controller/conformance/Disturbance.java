package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.Channel;

/** Ways in which a sensor lies. Each maps a channel's true value, or its value when it stuck, to what is read. */
enum Disturbance {
    NOT_A_NUMBER("not a number"),
    DROP_OUTS("drop-outs"),
    STUCK("stuck sensor"),
    SATURATED_HIGH("saturated high"),
    SATURATED_LOW("saturated low"),
    INFINITE("infinite"),
    HUGE("huge");

    final String title;

    Disturbance(String title) {
        this.title = title;
    }

    /** What the channel reads at a tick, given its true value now and when the sensor failed. */
    float reading(int tick, Channel channel, float now, float atFailure) {
        return switch (this) {
            case NOT_A_NUMBER -> Float.NaN;
            case DROP_OUTS -> Hash.of(tick, channel.title().hashCode()) % 5 == 0 ? Float.NaN : now;
            case STUCK -> atFailure;
            case SATURATED_HIGH -> fullScale(channel);
            case SATURATED_LOW -> -fullScale(channel);
            case INFINITE -> (tick & 1) == 0 ? Float.POSITIVE_INFINITY : Float.NEGATIVE_INFINITY;
            case HUGE -> (tick & 1) == 0 ? Float.MAX_VALUE : -Float.MAX_VALUE;
        };
    }

    /** An amplitude that no tool reaches, in the channel's own unit. */
    private static float fullScale(Channel channel) {
        return switch (channel) {
            case CARRIER_ANGLE, ANVIL_ANGLE -> 1e6f;
            case CARRIER_SPEED, HOUSING_RATE -> 1e4f;
            case MOTOR_CURRENT -> 1e3f;
            case SUPPLY_VOLTAGE -> 10f;
            case HOUSING_ACCELERATION -> 1e5f;
            case BLOWS -> 1000f;
            case TORQUE -> 1e5f;
        };
    }
}
