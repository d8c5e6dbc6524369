package org.shutoffbench.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shutoffbench.draw.DrawKey;
import org.shutoffbench.draw.Stream;
import org.shutoffbench.tool.Housing;
import org.shutoffbench.tool.ReferenceTools;

/** Against closed forms of textbook mechanics (second-order systems) and of the Ornstein-Uhlenbeck process. */
class HousingMotionAnalyticTest {

    private static final double PERIOD_S = 1e-4;
    private static final ArmMotion YIELDING = new ArmMotion(true, 0, 1);
    private static final DrawKey KEY = DrawKey.of(9, "housing", "sway");

    private static HousingMotion started(ArmMotion arm, Housing housing, long key) {
        HousingMotion motion = new HousingMotion(arm, PERIOD_S);
        motion.start(housing, key);
        return motion;
    }

    /** J b'' + c b' + k b = -T from rest, under-damped: b = -T/k (1 - e^(-s t) (cos w t + s/w sin w t)). */
    @Test
    void stepOfTorqueTurnsTheHousingBackAsTheClosedFormSays() {
        Housing housing = ReferenceTools.LIGHT.housing();
        HousingMotion motion = started(YIELDING, housing, 1);
        double torqueNm = 3.4;
        double s = housing.dampingNmSPerRad() / (2 * housing.inertiaKgM2());
        double w = Math.sqrt(housing.stiffnessNmPerRad() / housing.inertiaKgM2() - s * s);

        for (int tick = 0; tick < 5000; tick++) {
            motion.advance(tick, torqueNm);
            double t = tick * PERIOD_S;
            double fallen = Math.exp(-s * t) * (Math.cos(w * t) + s / w * Math.sin(w * t));
            double expected = -torqueNm / housing.stiffnessNmPerRad() * (1 - fallen);
            assertThat(motion.angleRad()).isCloseTo(expected, within(1e-14));
        }
        assertThat(motion.angleRad()).isCloseTo(-torqueNm / 60, within(1e-5));
    }

    /** Over-damped, with a ramp of torque: J b'' + c b' + k b = -r t. */
    @Test
    void rampOfTorqueIsFollowedExactlyWithAHeavilyDampedHousingToo() {
        Housing housing = new Housing(0.02, 5, 60);
        HousingMotion motion = started(YIELDING, housing, 1);
        double rate = 20;
        double half = housing.dampingNmSPerRad() / (2 * housing.inertiaKgM2());
        double root = Math.sqrt(half * half - housing.stiffnessNmPerRad() / housing.inertiaKgM2());
        double p = -half + root;
        double q = -half - root;
        double lag = housing.dampingNmSPerRad() / housing.stiffnessNmPerRad();
        // particular solution (t - c/k), plus A e^(p t) + B e^(q t) that starts at rest
        double a = (-1 - q * lag) / (p - q);
        double b = lag - a;

        for (int tick = 0; tick < 3000; tick++) {
            double t = tick * PERIOD_S;
            motion.advance(tick, rate * t);
            double shape = t - lag + a * Math.exp(p * t) + b * Math.exp(q * t);
            assertThat(motion.angleRad()).isCloseTo(-rate / housing.stiffnessNmPerRad() * shape, within(1e-13));
        }
    }

    @Test
    void torqueThatTightensMakesTheMeasuredAngleRunAhead() {
        ScriptedPlant plant = new ScriptedPlant();
        plant.anvilAngle = t -> 2;
        plant.motorTorque = t -> 3;
        Bench bench = Bench.start(plant, SensorPresets.IDEAL.withArm(YIELDING), Quantity.ANVIL_ANGLE);

        double[] angles = bench.record(300, r -> r.anvilAngleRad);

        assertThat(angles[0]).isEqualTo(2);
        assertThat(angles[299]).isGreaterThan(2.02);
    }

    @Test
    void aToolInAStandReadsTheAnvilItself() {
        ScriptedPlant plant = new ScriptedPlant();
        plant.anvilAngle = t -> 30 * t;
        plant.motorTorque = t -> 3;
        Bench bench = Bench.start(plant, SensorPresets.IDEAL, Quantity.ANVIL_ANGLE, Quantity.HOUSING_RATE);

        for (int i = 0; i < 200; i++) {
            SensorReading reading = bench.next();
            assertThat(reading.anvilAngleRad).isCloseTo(30e-4f * i, within(1e-6f));
            assertThat(reading.housingRateRadPerS).isZero();
        }
    }

    /** Ornstein-Uhlenbeck: variance s^2, correlation e^(-lag/tau). Over n tau of record both are known to about sqrt(2/n). */
    @Test
    void swayHasItsSizeAndItsCorrelationTime() {
        double rms = 0.0174;
        double timeS = 0.01;
        HousingMotion motion = started(new ArmMotion(false, rms, timeS), ReferenceTools.LIGHT.housing(), 77);
        int count = 4_000_000;
        double[] sway = new double[count];
        double mean = 0;
        for (int tick = 0; tick < count; tick++) {
            motion.advance(tick, 0);
            sway[tick] = motion.angleRad();
            mean += sway[tick] / count;
        }
        double relative = 5 * Math.sqrt(2 / (count * PERIOD_S / timeS));
        double variance = correlation(sway, mean, 0);

        assertThat(Math.sqrt(variance)).isCloseTo(rms, within(rms * relative / 2));
        for (int lag : new int[] {1, 10, 50, 100, 200, 400}) {
            assertThat(correlation(sway, mean, lag) / variance)
                    .isCloseTo(Math.exp(-lag * PERIOD_S / timeS), within(relative));
        }
        double neighbours = correlation(sway, mean, 1) / variance;
        assertThat(1 - neighbours).isCloseTo(PERIOD_S / timeS, within(1e-3));
    }

    private static double correlation(double[] values, double mean, int lag) {
        double sum = 0;
        for (int i = lag; i < values.length; i++) {
            sum += (values[i] - mean) * (values[i - lag] - mean);
        }
        return sum / (values.length - lag);
    }

    /** From a stationary start, E (s(t) - s(0))^2 = 2 rms^2 (1 - e^(-t/tau)). */
    @Test
    void swaySinceTheStartGrowsAsAStationaryProcessDoes() {
        double rms = 0.0174;
        ArmMotion arm = new ArmMotion(false, rms, 0.5);
        int runs = 4000;
        int ticks = 1000;
        double squares = 0;
        for (int run = 0; run < runs; run++) {
            HousingMotion motion = started(arm, ReferenceTools.LIGHT.housing(), KEY.noiseKey(Stream.SENSOR, run, 0));
            for (int tick = 0; tick <= ticks; tick++) {
                motion.advance(tick, 0);
            }
            squares += motion.angleRad() * motion.angleRad() / runs;
        }
        double expected = 2 * rms * rms * (1 - Math.exp(-ticks * PERIOD_S / 0.5));

        assertThat(squares).isCloseTo(expected, within(5 * expected * Math.sqrt(2.0 / runs)));
    }

    @Test
    void ratesAddUpToTheAngle() {
        HousingMotion motion = started(SensorPresets.ARM, ReferenceTools.HEAVY.housing(), 5);
        double sum = 0;
        for (int tick = 0; tick < 2000; tick++) {
            motion.advance(tick, 5 * Math.sin(0.01 * tick));
            sum += motion.rateRadPerS() * PERIOD_S;
            assertThat(motion.angleRad()).isCloseTo(sum, within(1e-13));
        }
        assertThat(motion.angleRad()).isNotZero();
    }

    @Test
    void aNewRunStartsAtRestAgain() {
        HousingMotion motion = started(SensorPresets.ARM, ReferenceTools.LIGHT.housing(), 5);
        double[] first = new double[50];
        for (int tick = 0; tick < 50; tick++) {
            motion.advance(tick, 3);
            first[tick] = motion.angleRad();
        }
        motion.start(new Housing(0.03, 1, 80), 6);
        motion.advance(0, 3);
        motion.advance(1, 3);
        motion.start(ReferenceTools.LIGHT.housing(), 5);
        for (int tick = 0; tick < 50; tick++) {
            motion.advance(tick, 3);
            assertThat(motion.angleRad()).isEqualTo(first[tick]);
        }
    }

    @Test
    void housingRateIsReadThroughItsChannel() {
        ScriptedPlant plant = new ScriptedPlant();
        plant.motorTorque = t -> 3;
        Bench bench = Bench.start(plant, SensorPresets.IDEAL.withArm(YIELDING), Quantity.HOUSING_RATE);
        HousingMotion motion = started(YIELDING, ReferenceTools.LIGHT.housing(), 5);

        for (int tick = 0; tick < 100; tick++) {
            motion.advance(tick, 3);
            assertThat(bench.next().housingRateRadPerS).isEqualTo((float) motion.rateRadPerS());
        }
        assertThat(motion.rateRadPerS()).isNegative();
    }
}
