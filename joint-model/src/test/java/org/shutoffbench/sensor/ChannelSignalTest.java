package org.shutoffbench.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shutoffbench.draw.DrawKey;

class ChannelSignalTest {

    private static final Quantity SPEED = Quantity.CARRIER_SPEED;

    private final ScriptedPlant plant = new ScriptedPlant();

    private double[] speeds(ChannelSensor sensor, int samples) {
        return speeds(sensor, SensorErrors.NONE, samples);
    }

    private double[] speeds(ChannelSensor sensor, SensorErrors errors, int samples) {
        SensorSuite suite = SensorPresets.IDEAL.with(SPEED, sensor);
        return Bench.start(plant, suite, errors, Bench.KEY, SPEED).record(samples, r -> r.carrierSpeedRadPerS);
    }

    @Test
    void anIdealSensorReadsTheTruthAtTheSample() {
        plant.carrierSpeed = t -> 1000 * t;

        double[] read = speeds(ChannelSensor.IDEAL, 50);

        for (int i = 0; i < read.length; i++) {
            assertThat(read[i]).isCloseTo(0.1 * i, within(1e-6));
        }
    }

    @Test
    void readingsAreTheNearestMultipleOfTheResolution() {
        plant.carrierSpeed = t -> 1000 * t - 2;

        double[] read = speeds(ChannelSensor.IDEAL.withResolution(0.25), 50);

        for (int i = 0; i < read.length; i++) {
            assertThat(read[i] * 4).isCloseTo(Math.rint((0.1 * i - 2) * 4), within(1e-9));
        }
    }

    @Test
    void readingsSaturateAtBothEndsOfTheRange() {
        plant.carrierSpeed = t -> 1000 * t - 2;

        double[] read = speeds(ChannelSensor.IDEAL.withRange(-1, 1.5), 50);

        for (int i = 0; i < read.length; i++) {
            assertThat(read[i]).isCloseTo(Math.max(-1, Math.min(1.5, 0.1 * i - 2)), within(1e-6));
        }
    }

    @Test
    void noiseHasItsSizeAndIsWhite() {
        double[] read = speeds(ChannelSensor.IDEAL.withNoise(2), 100_000);
        double squares = 0;
        double neighbours = 0;
        for (int i = 1; i < read.length; i++) {
            squares += read[i] * read[i];
            neighbours += read[i] * read[i - 1];
        }
        double fiveErrors = 5 / Math.sqrt(read.length);

        assertThat(Math.sqrt(squares / read.length)).isCloseTo(2, within(2 * fiveErrors));
        assertThat(neighbours / squares).isCloseTo(0, within(fiveErrors));
    }

    @Test
    void gainAndOffsetActBeforeNoiseRangeAndResolution() {
        plant.carrierSpeed = t -> 100;
        ChannelSensor sensor = ChannelSensor.IDEAL.withGainError(0.03).withOffsetError(4);
        SensorSuite suite = SensorPresets.IDEAL.with(SPEED, sensor);
        SensorErrors errors = SensorErrors.draw(suite, DrawKey.of(1, "s", "f"), 17);

        assertThat(errors.gain(SPEED)).isNotEqualTo(1);
        assertThat(errors.offset(SPEED)).isNotEqualTo(0);
        double expected = 100 * errors.gain(SPEED) + errors.offset(SPEED);
        assertThat(speeds(sensor, errors, 1)[0]).isCloseTo(expected, within(1e-5));
        assertThat(speeds(sensor.withResolution(10), errors, 1)[0]).isEqualTo(Math.rint(expected / 10) * 10);
    }

    @Test
    void latencyShiftsByWholeSamplesAndParts() {
        plant.carrierSpeed = t -> 1000 * t + 7;

        double[] whole = speeds(ChannelSensor.IDEAL.withLatencyNs(300_000), 20);
        double[] parts = speeds(ChannelSensor.IDEAL.withLatencyNs(325_000), 20);

        for (int i = 0; i < 20; i++) {
            assertThat(whole[i]).isCloseTo(7 + Math.max(0, 0.1 * (i - 3)), within(1e-5));
            assertThat(parts[i])
                    .isCloseTo(i < 4 ? 7 + 0.1 * Math.max(0, 0.75 * (i - 3)) : 7 + 0.1 * (i - 3.25), within(1e-5));
        }
    }

    @Test
    void slowChannelsRepeatTheirLastReading() {
        plant.carrierSpeed = t -> 1000 * t;

        double[] read = speeds(ChannelSensor.IDEAL.withRateHz(2_500), 21);

        for (int i = 0; i < read.length; i++) {
            assertThat(read[i]).isCloseTo(0.1 * (i - i % 4), within(1e-6));
        }
    }

    @Test
    void lowPassStartsSettledAndFollowsAStepAsAnExponential() {
        plant.carrierSpeed = t -> t <= 1e-3 ? 50 : 50 + 1e5 * Math.min(1e-4, t - 1e-3);

        double[] read = speeds(ChannelSensor.IDEAL.withLowPass(LowPass.firstOrder(200)), 60);

        double rate = 2 * Math.PI * 200;
        for (int i = 0; i <= 10; i++) {
            assertThat(read[i]).isCloseTo(50, within(1e-5));
        }
        for (int i = 11; i < read.length; i++) {
            double since = 1e-4 * (i - 11);
            double afterRamp = 10 * (1 - (1 - Math.exp(-rate * 1e-4)) / (rate * 1e-4));
            assertThat(read[i]).isCloseTo(60 - (10 - afterRamp) * Math.exp(-rate * since), within(1e-4));
        }
    }

    @Test
    void dropOutsTakeTheirShareInPieces() {
        double[] read = speeds(ChannelSensor.IDEAL.withFaults(Faults.dropOuts(0.1, 500_000)), 200_000);
        int lost = 0;
        for (int piece = 0; piece < read.length / 5; piece++) {
            boolean first = Double.isNaN(read[5 * piece]);
            lost += first ? 1 : 0;
            for (int i = 0; i < 5; i++) {
                assertThat(Double.isNaN(read[5 * piece + i])).isEqualTo(first);
            }
        }
        int pieces = read.length / 5;
        assertThat(lost / (double) pieces).isCloseTo(0.1, within(5 * Math.sqrt(0.09 / pieces)));
    }

    @Test
    void aStuckChannelRepeatsItsLastReadingToTheEnd() {
        plant.carrierSpeed = t -> 1000 * t;

        double[] read = speeds(ChannelSensor.IDEAL.withFaults(Faults.NONE.andStuck(1, 10_000_000)), 300);

        int last = 299;
        while (last > 0 && read[last - 1] == read[299]) {
            last--;
        }
        assertThat(last).isBetween(0, 100);
        for (int i = 0; i <= last; i++) {
            assertThat(read[i]).isCloseTo(0.1 * i, within(1e-6));
        }
    }

    @Test
    void aChannelSticksInItsShareOfRunsAtAnyInstant() {
        plant.carrierSpeed = t -> 1000 * t;
        SensorSuite suite =
                SensorPresets.IDEAL.with(SPEED, ChannelSensor.IDEAL.withFaults(Faults.NONE.andStuck(0.3, 5_000_000)));
        DrawKey key = DrawKey.of(1, "s", "f");
        int stuck = 0;
        double sum = 0;
        int runs = 2000;
        for (int run = 0; run < runs; run++) {
            long noiseKey = key.noiseKey(org.shutoffbench.draw.Stream.SENSOR, run, 0);
            double[] read = Bench.start(plant, suite, SensorErrors.NONE, noiseKey, SPEED)
                    .record(60, r -> r.carrierSpeedRadPerS);
            if (read[59] < 5.85) {
                stuck++;
                sum += read[59];
            }
        }
        assertThat(stuck / (double) runs).isCloseTo(0.3, within(5 * Math.sqrt(0.21 / runs)));
        assertThat(sum / stuck).as("mean time in 0.1 ms").isCloseTo(2.45, within(5 * 5 / Math.sqrt(12.0 * stuck)));
    }
}
