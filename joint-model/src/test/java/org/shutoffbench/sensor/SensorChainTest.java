package org.shutoffbench.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.tool.ReferenceTools;

/** The chain on the real plant: a medium joint of plain numbers, struck by the light tool. */
class SensorChainTest {

    private static final Quantity[] ALL = Quantity.values();

    /** All channels, all errors, all faults that leave most readings alone. */
    private static final SensorSuite EVERYTHING = SensorPresets.GOOD_WITH_TORQUE
            .with(
                    Quantity.CARRIER_SPEED,
                    ChannelSensor.IDEAL
                            .withLatencyNs(250_000)
                            .withLowPass(LowPass.butterworth(700))
                            .withNoise(1)
                            .withFaults(Faults.dropOuts(0.01, 700_000).andStuck(0.5, 400_000_000)))
            .withBlowDetector(new BlowDetector(100_000, 0.5e-3, 0.1, 0.1, 3_000_000, 0));

    private static FastPlant startedPlant() {
        double kF = 2e8 * 1.75e-3 / (2 * Math.PI);
        JointLaw joint = new JointLaw(
                TorqueTension.of(1.75e-3, 10.863e-3, 15.6e-3, 0.12, 0.12),
                new ClampLaw(kF, 4 * Math.PI, 0.2),
                FreeTorque.of(0.2, List.of()),
                1.05,
                Yielding.OFF,
                Galling.NONE);
        FastPlant plant = new FastPlant();
        plant.start(joint, ReferenceTools.LIGHT, 0.95);
        return plant;
    }

    private static Bench started(SensorSuite suite, Quantity... quantities) {
        return Bench.begin(startedPlant(), new SensorChain(suite), SensorErrors.NONE, Bench.KEY, quantities);
    }

    private static float value(SensorReading reading, Quantity quantity) {
        return switch (quantity) {
            case CARRIER_ANGLE -> reading.carrierAngleRad;
            case CARRIER_SPEED -> reading.carrierSpeedRadPerS;
            case MOTOR_CURRENT -> reading.motorCurrentA;
            case SUPPLY_VOLTAGE -> reading.supplyRatio;
            case HOUSING_ACCELERATION -> reading.housingAccelerationMPerS2;
            case BLOWS -> reading.blows;
            case ANVIL_ANGLE -> reading.anvilAngleRad;
            case HOUSING_RATE -> reading.housingRateRadPerS;
            case TORQUE -> reading.torqueNm;
        };
    }

    private static int bits(SensorReading reading, Quantity quantity) {
        return Float.floatToIntBits(value(reading, quantity));
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void aChannelReadsTheSameWhateverElseIsSampled(Quantity quantity) {
        Bench all = started(EVERYTHING, ALL);
        Bench alone = started(EVERYTHING, quantity);

        for (int i = 0; i < 5000; i++) {
            assertThat(bits(alone.next(), quantity)).isEqualTo(bits(all.next(), quantity));
        }
    }

    @Test
    void whatIsNotSampledIsNaN() {
        Bench bench = started(EVERYTHING, Quantity.SUPPLY_VOLTAGE);

        bench.run(3000, reading -> {
            for (Quantity quantity : EnumSet.complementOf(EnumSet.of(Quantity.SUPPLY_VOLTAGE, Quantity.BLOWS))) {
                assertThat(value(reading, quantity)).isNaN();
            }
            assertThat(reading.blows).isZero();
            assertThat(reading.supplyRatio).isCloseTo(0.95f, within(0.02f));
        });
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void noiseOfAnotherRunDiffers(Quantity quantity) {
        if (quantity == Quantity.CARRIER_ANGLE) {
            return; // has no noise
        }
        double[] one = Bench.begin(startedPlant(), new SensorChain(EVERYTHING), SensorErrors.NONE, 1, ALL)
                .record(5000, r -> value(r, quantity));
        double[] other = Bench.begin(startedPlant(), new SensorChain(EVERYTHING), SensorErrors.NONE, 2, ALL)
                .record(5000, r -> value(r, quantity));

        assertThat(one).isNotEqualTo(other);
    }

    @Test
    void copiesGoOnAsTheirOriginalBitForBit() {
        for (int forkAt : new int[] {1, 777, 1501, 2345, 3030}) {
            Bench original = started(EVERYTHING, ALL);
            original.run(forkAt, r -> {});
            SensorChain usedBefore = new SensorChain(EVERYTHING);
            Bench.begin(startedPlant(), usedBefore, SensorErrors.NONE, 99, ALL).run(1234, r -> {});
            Bench copy = original.fork(new FastPlant(), usedBefore);
            for (int i = 0; i < 1500; i++) {
                SensorReading expected = original.next();
                SensorReading actual = copy.next();
                for (Quantity quantity : ALL) {
                    assertThat(bits(actual, quantity)).isEqualTo(bits(expected, quantity));
                }
            }
        }
    }

    @Test
    void aChainStartedAgainForgetsItsPast() {
        SensorChain chain = new SensorChain(EVERYTHING);
        double[] first =
                Bench.begin(startedPlant(), chain, SensorErrors.NONE, 3, ALL).record(4000, SensorChainTest::sum);
        Bench.begin(startedPlant(), chain, SensorErrors.NONE, 4, ALL).run(2000, r -> {});
        double[] again =
                Bench.begin(startedPlant(), chain, SensorErrors.NONE, 3, ALL).record(4000, SensorChainTest::sum);

        assertThat(again).isEqualTo(first);
    }

    private static double sum(SensorReading reading) {
        double sum = 0;
        for (Quantity quantity : ALL) {
            sum = sum * 0.7 + value(reading, quantity);
        }
        return sum;
    }

    @Test
    void everyBlowOfThePlantIsReportedByAnIdealDetector() {
        FastPlant plant = startedPlant();
        double[] counts = Bench.begin(plant, new SensorChain(SensorPresets.IDEAL), SensorErrors.NONE, 3, Quantity.BLOWS)
                .record(10_000, r -> r.blows);
        double sum = 0;
        for (double count : counts) {
            sum += count;
        }
        assertThat(sum).isEqualTo(plant.state().blows).isGreaterThan(30);
    }

    /** SI: torque constant (N m/A) and voltage constant (V s/rad) of a motor are the same number. */
    @Test
    void currentIsTorqueOverTheConstantThatNoLoadSpeedImplies() {
        ScriptedPlant plant = new ScriptedPlant();
        plant.motorTorque = t -> 2;

        double[] current =
                Bench.start(plant, SensorPresets.IDEAL, Quantity.MOTOR_CURRENT).record(3, r -> r.motorCurrentA);

        assertThat(current[2]).isCloseTo(2 / (18.0 / 183), within(1e-5));
    }

    @Test
    void angleSpeedAndInstantaneousTorqueAreLookedUpAtTheSample() {
        ScriptedPlant plant = new ScriptedPlant();
        plant.carrierAngle = t -> 5 * t;
        plant.carrierSpeed = t -> 6 * t;
        plant.socketTorque = t -> 7 * t;
        Bench bench = Bench.start(
                plant, SensorPresets.IDEAL, Quantity.CARRIER_ANGLE, Quantity.CARRIER_SPEED, Quantity.TORQUE);
        bench.run(100, r -> {});

        SensorReading reading = bench.next();

        assertThat(reading.carrierAngleRad).isEqualTo(0.05f);
        assertThat(reading.carrierSpeedRadPerS).isEqualTo(0.06f);
        assertThat(reading.torqueNm).isEqualTo(0.07f);
    }

    /** A shock of constant torque over 40 us, at any place between samples: its impulse is the integral of the reading. */
    @Test
    void noImpulseIsLostHoweverShort() {
        for (double startS : new double[] {0.002, 0.00201, 0.002037, 0.0020999}) {
            double endS = startS + 40e-6;
            ScriptedPlant plant = new ScriptedPlant();
            plant.lugTorque = t -> t > startS && t < endS ? 500 : 0;
            plant.eventTimesS = new double[] {startS, endS};
            SensorSuite suite = SensorPresets.IDEAL
                    .withPace(50_000, 0)
                    .with(Quantity.HOUSING_ACCELERATION, ChannelSensor.IDEAL.withLowPass(LowPass.butterworth(2_000)));
            double[] read = Bench.start(plant, suite, Quantity.HOUSING_ACCELERATION)
                    .record(1000, r -> r.housingAccelerationMPerS2);
            double integral = 0;
            for (double value : read) {
                integral += value / 50_000;
            }
            assertThat(integral).isCloseTo(2.0 * 500 * 40e-6, within(1e-4 * 2 * 500 * 40e-6));
        }
    }

    /** The torque of a real blow, its plant cut into steps of its own or into shorter ones. */
    @Test
    void readingsDoNotDependOnHowThePlantIsCutIntoSteps() {
        double[] coarse = torqueInStepsOf(1e-3);
        double[] fine = torqueInStepsOf(7e-6);

        for (int i = 0; i < coarse.length; i++) {
            assertThat(fine[i]).isCloseTo(coarse[i], within(0.02));
        }
    }

    private static double[] torqueInStepsOf(double stepS) {
        ScriptedPlant plant = new ScriptedPlant();
        plant.stepS = stepS;
        plant.socketTorque = t -> 100 * Math.exp(-300 * (t % 0.02)) * Math.sin(2 * Math.PI * 2750 * t);
        SensorSuite suite =
                SensorPresets.IDEAL.with(Quantity.TORQUE, ChannelSensor.IDEAL.withLowPass(LowPass.butterworth(2_000)));
        return Bench.start(plant, suite, Quantity.TORQUE).record(1000, r -> r.torqueNm);
    }

    @Test
    void aChannelThatTheToolLacksIsAnErrorAtStart() {
        SensorChain chain = new SensorChain(SensorPresets.GOOD);

        assertThatIllegalArgumentException()
                .isThrownBy(() -> chain.start(
                        ReferenceTools.LIGHT,
                        SensorErrors.NONE,
                        1,
                        1,
                        Quantity.mask(Set.of(Quantity.BLOWS, Quantity.TORQUE))))
                .withMessage("sensors \"good\" have no channel \"torque at the anvil\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SensorChain(SensorPresets.GOOD.without(Quantity.BLOWS))
                        .start(ReferenceTools.LIGHT, SensorErrors.NONE, 1, 1, Quantity.BLOWS.bit()))
                .withMessageContaining("blow detection");
    }

    @Test
    void aMaskOfNothingKnownIsAnError() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SensorChain(SensorPresets.IDEAL)
                        .start(ReferenceTools.LIGHT, SensorErrors.NONE, 1, 1, 1 << 20));
    }

    @Test
    void samplesAreTakenInOrder() {
        ScriptedPlant plant = new ScriptedPlant();
        plant.plan();
        SensorChain chain = new SensorChain(SensorPresets.IDEAL);
        chain.start(ReferenceTools.LIGHT, SensorErrors.NONE, 1, 1, Quantity.CARRIER_SPEED.bit());
        chain.sample(0, plant);

        assertThatIllegalStateException().isThrownBy(() -> chain.sample(2, plant));
        assertThatIllegalStateException().isThrownBy(() -> chain.sample(0, plant));
    }

    @Test
    void onlyAChainOfTheSameSuiteCanBeCopied() {
        SensorChain cheap = new SensorChain(SensorPresets.CHEAP);

        assertThatIllegalArgumentException().isThrownBy(() -> cheap.copyFrom(new SensorChain(SensorPresets.GOOD)));
        cheap.copyFrom(new SensorChain(SensorPresets.CHEAP.named("other").named("cheap")));
    }

    @Test
    void startingSamplingAndCopyingAllocateNothing() {
        FastPlant plant = startedPlant();
        plant.plan();
        SensorChain chain = new SensorChain(EVERYTHING);
        SensorChain copy = new SensorChain(EVERYTHING);
        int mask = Quantity.mask(EVERYTHING.quantities());
        exercise(chain, copy, plant, mask, 200);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(thread);
        long idle = threads.getThreadAllocatedBytes(thread) - before;

        before = threads.getThreadAllocatedBytes(thread);
        exercise(chain, copy, plant, mask, 2000);

        assertThat(threads.getThreadAllocatedBytes(thread) - before).isLessThanOrEqualTo(idle);
    }

    /** Many short runs over the plant's first, long step. */
    private static void exercise(SensorChain chain, SensorChain copy, FastPlant plant, int mask, int runs) {
        for (int run = 0; run < runs; run++) {
            chain.start(ReferenceTools.LIGHT, SensorErrors.NONE, 1, run, mask);
            chain.sample(0, plant);
            chain.beforeCommit(plant, 1e-5);
            copy.copyFrom(chain);
        }
    }
}
