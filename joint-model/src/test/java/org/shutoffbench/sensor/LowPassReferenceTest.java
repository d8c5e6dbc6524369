package org.shutoffbench.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Indicated over true peak of a half-sine pulse behind a low pass. The oracle integrates the low pass's differential
 * equation with steps of 0.1 us by the classical Runge-Kutta method, independently of the chain.
 */
class LowPassReferenceTest {

    private static final double PEAK_NM = 100;
    private static final double START_S = 2.35e-3;

    /** Computed with SciPy 1.17 (solve_ivp, DOP853, relative tolerance 1e-11), pulse and decay integrated apart. */
    @ParameterizedTest
    @CsvSource({
        "1, 500, 1.0, 0.75620",
        "2, 500, 1.0, 0.72793",
        "1, 1000, 1.0, 0.90137",
        "2, 1000, 1.0, 0.94527",
        "1, 2000, 0.5, 0.90137",
        "2, 2000, 0.5, 0.94527",
        "1, 250, 0.5, 0.35832",
        "2, 250, 0.5, 0.22467"
    })
    void halfSineKeepsThisShareOfItsPeak(int order, double cutoffHz, double pulseMs, double share) {
        LowPass lowPass = new LowPass(order, cutoffHz);
        double oracle =
                Arrays.stream(oracle(lowPass, pulseMs / 1e3, 1e-7)).max().orElseThrow() / PEAK_NM;

        double[] sampled = indicated(lowPass, pulseMs / 1e3, 200_000);
        double seen = Arrays.stream(sampled).max().orElseThrow() / PEAK_NM;

        assertThat(oracle).isCloseTo(share, within(1e-5));
        assertThat(seen).isCloseTo(oracle, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"1, 500, 1.0", "2, 500, 1.0", "1, 2000, 0.5", "2, 2000, 0.5", "2, 250, 0.5", "2, 4000, 0.065"})
    void everySampleAgreesWithAFineIntegration(int order, double cutoffHz, double pulseMs) {
        LowPass lowPass = new LowPass(order, cutoffHz);
        double[] oracle = oracle(lowPass, pulseMs / 1e3, 1e-7);

        double[] sampled = indicated(lowPass, pulseMs / 1e3, 10_000);

        for (int i = 0; i < sampled.length; i++) {
            assertThat(sampled[i]).isCloseTo(oracle[i * 1000], within(2e-4 * PEAK_NM));
        }
    }

    private static double[] indicated(LowPass lowPass, double pulseS, int rateHz) {
        ScriptedPlant plant = new ScriptedPlant();
        plant.socketTorque = t -> halfSine(t, pulseS);
        plant.eventTimesS = new double[] {START_S, START_S + pulseS};
        SensorSuite suite =
                SensorPresets.IDEAL.withPace(rateHz, 0).with(Quantity.TORQUE, ChannelSensor.IDEAL.withLowPass(lowPass));
        return Bench.start(plant, suite, Quantity.TORQUE).record(rateHz / 100, r -> r.torqueNm);
    }

    private static double halfSine(double t, double pulseS) {
        double since = t - START_S;
        return since < 0 || since > pulseS ? 0 : PEAK_NM * Math.sin(Math.PI * since / pulseS);
    }

    /** The output at every step for 10 ms. */
    private static double[] oracle(LowPass lowPass, double pulseS, double stepS) {
        double[] outputs = new double[(int) Math.round(0.01 / stepS) + 1];
        double[] x = {0, 0};
        for (int i = 0; i < outputs.length; i++) {
            outputs[i] = x[0];
            double t = i * stepS;
            double[] k1 = slope(lowPass, x, halfSine(t, pulseS));
            double[] k2 = slope(lowPass, along(x, k1, stepS / 2), halfSine(t + stepS / 2, pulseS));
            double[] k3 = slope(lowPass, along(x, k2, stepS / 2), halfSine(t + stepS / 2, pulseS));
            double[] k4 = slope(lowPass, along(x, k3, stepS), halfSine(t + stepS, pulseS));
            for (int j = 0; j < 2; j++) {
                x[j] += stepS / 6 * (k1[j] + 2 * k2[j] + 2 * k3[j] + k4[j]);
            }
        }
        return outputs;
    }

    private static double[] slope(LowPass lowPass, double[] x, double input) {
        double w = 2 * Math.PI * lowPass.cutoffHz();
        return lowPass.order() == 1
                ? new double[] {w * (input - x[0]), 0}
                : new double[] {x[1], w * w * (input - x[0]) - Math.sqrt(2) * w * x[1]};
    }

    private static double[] along(double[] x, double[] slope, double stepS) {
        return new double[] {x[0] + stepS * slope[0], x[1] + stepS * slope[1]};
    }
}
