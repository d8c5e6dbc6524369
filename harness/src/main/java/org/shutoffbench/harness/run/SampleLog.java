package org.shutoffbench.harness.run;

import org.shutoffbench.sensor.SensorReading;

/** What the tool sensed, one row per sample; an empty field where a channel is missing or dropped out. */
public final class SampleLog implements Trace.SampleSink {

    private final StringBuilder text = new StringBuilder("time_s,carrier_angle_rad,carrier_speed_rad_s,motor_current_A,"
            + "supply_ratio,housing_acceleration_m_s2,blows,anvil_angle_rad,housing_rate_rad_s,torque_Nm\n");

    @Override
    public void accept(double timeS, SensorReading reading) {
        Decimals.append(text, timeS, 7);
        append(reading.carrierAngleRad);
        append(reading.carrierSpeedRadPerS);
        append(reading.motorCurrentA);
        append(reading.supplyRatio);
        append(reading.housingAccelerationMPerS2);
        text.append(',').append(reading.blows);
        append(reading.anvilAngleRad);
        append(reading.housingRateRadPerS);
        append(reading.torqueNm);
        text.append('\n');
    }

    private void append(float value) {
        text.append(',');
        Decimals.append(text, value, 6);
    }

    /** All rows with their header. */
    public String text() {
        return text.toString();
    }
}
