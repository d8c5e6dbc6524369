package org.shutoffbench.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BlowReportsTest {

    private static final int BLOWS = 20_000;
    private static final double GAP_S = 0.02;

    private final ScriptedPlant plant = new ScriptedPlant();

    /** Ticks at which reports come, one entry per report. */
    private List<Integer> reports(BlowDetector detector, int samples) {
        Bench bench = Bench.start(plant, SensorPresets.IDEAL.withBlowDetector(detector), Quantity.BLOWS);
        List<Integer> ticks = new ArrayList<>();
        for (int tick = 0; tick < samples; tick++) {
            int count = bench.next().blows;
            for (int i = 0; i < count; i++) {
                ticks.add(tick);
            }
        }
        return ticks;
    }

    /** Reports of very many blows, straight from the detector: their delays in s, NaN where missed. */
    private static double[][] delays(BlowDetector detector) {
        BlowReports reports = new BlowReports(detector);
        reports.start(11, 12);
        org.shutoffbench.plant.PlantState state = new org.shutoffbench.plant.PlantState();
        state.lastBlowHammerSpeedRadPerS = 200;
        double[] first = new double[BLOWS];
        double[] second = new double[BLOWS];
        for (int blow = 0; blow < BLOWS; blow++) {
            state.blows = blow + 1;
            state.lastBlowTimeS = blow * GAP_S;
            first[blow] = Double.NaN;
            second[blow] = Double.NaN;
            reports.notice(state);
            for (int step = 0; step < 2000; step++) {
                double sinceS = step * 1e-5;
                int due = reports.due(state.lastBlowTimeS + sinceS);
                if (due > 0) {
                    second[blow] = Double.isNaN(first[blow]) ? second[blow] : sinceS;
                    first[blow] = Double.isNaN(first[blow]) ? sinceS : first[blow];
                }
            }
        }
        return new double[][] {first, second};
    }

    @Test
    void anIdealDetectorReportsEveryBlowOnceAtTheNextSample() {
        plant.blowTimesS = new double[] {0.00105, 0.0020001, 0.00499};

        assertThat(reports(BlowDetector.IDEAL, 100)).containsExactly(11, 21, 50);
    }

    @Test
    void aBlowAtTheInstantOfASampleIsSeenByTheNextOne() {
        plant.blowTimesS = new double[] {SensorPresets.IDEAL.timeS(10)};

        assertThat(reports(BlowDetector.IDEAL, 100)).containsExactly(11);
    }

    @Test
    void latencyDelaysTheReport() {
        plant.blowTimesS = new double[] {0.00105};

        assertThat(reports(new BlowDetector(1_000_000, 0, 0, 0, 0, 0), 100)).containsExactly(21);
    }

    @Test
    void blowsBetweenTwoSlowSamplesAreAllCounted() {
        SensorSuite slow = SensorPresets.IDEAL.withPace(10, 0);
        plant.blowTimesS = new double[] {0.101, 0.123, 0.145, 0.167, 0.189, slow.timeS(3)};
        Bench bench = Bench.start(plant, slow, Quantity.BLOWS);

        assertThat(bench.record(5, r -> r.blows)).containsExactly(0, 0, 5, 0, 1);
    }

    @Test
    void weakFirstContactsAreNotSeen() {
        plant.blowTimesS = new double[] {0.001, 0.002};
        plant.hammerSpeedAtBlow = 59.9;
        assertThat(reports(new BlowDetector(0, 0, 0, 0, 0, 60), 100)).isEmpty();

        plant.hammerSpeedAtBlow = 60;
        assertThat(reports(new BlowDetector(0, 0, 0, 0, 0, 60), 100)).hasSize(2);
    }

    @Test
    void jitterDelaysByTheSizeOfANormalNumber() {
        double[] delays = delays(new BlowDetector(0, 0.5e-3, 0, 0, 0, 0))[0];
        double squares = 0;
        double sum = 0;
        for (double delay : delays) {
            squares += (delay - 5e-6) * (delay - 5e-6) / delays.length;
            sum += (delay - 5e-6) / delays.length;
        }
        double rms = Math.sqrt(squares);

        assertThat(rms).isCloseTo(0.5e-3, within(0.5e-3 * 5 * Math.sqrt(0.5 / BLOWS)));
        assertThat(sum)
                .as("mean of a folded normal: sqrt(2/pi)")
                .isCloseTo(0.5e-3 * Math.sqrt(2 / Math.PI), within(1e-5));
    }

    @Test
    void blowsAreMissedAndDoubledInTheirShares() {
        double[][] delays = delays(new BlowDetector(0, 0, 0.005, 0.01, 3_000_000, 0));
        int missed = 0;
        int doubled = 0;
        for (int blow = 0; blow < BLOWS; blow++) {
            missed += Double.isNaN(delays[0][blow]) ? 1 : 0;
            if (!Double.isNaN(delays[1][blow])) {
                doubled++;
                assertThat(delays[0][blow]).isZero();
                assertThat(delays[1][blow]).isCloseTo(3e-3, within(1.1e-5));
            }
        }
        assertThat(missed / (double) BLOWS).isCloseTo(0.005, within(5 * Math.sqrt(0.005 / BLOWS)));
        assertThat(doubled / (double) BLOWS).isCloseTo(0.01, within(5 * Math.sqrt(0.01 / BLOWS)));
    }

    @Test
    void certainMissesAndCertainDoublesAreCertain() {
        plant.blowTimesS = new double[] {0.00105, 0.00205, 0.00305};

        assertThat(reports(new BlowDetector(0, 0, 1, 0, 0, 0), 100)).isEmpty();
        assertThat(reports(new BlowDetector(0, 0, 0, 1, 0, 0), 100)).hasSize(6);
        assertThat(reports(new BlowDetector(0, 0, 0, 1, 500_000, 0), 100)).containsExactly(11, 16, 21, 26, 31, 36);
    }

    @Test
    void aNewRunForgetsReportsUnderWay() {
        SensorChain chain =
                new SensorChain(SensorPresets.IDEAL.withBlowDetector(new BlowDetector(50_000_000, 0, 0, 0, 0, 0)));
        plant.blowTimesS = new double[] {0.001};
        plant.restart();
        Bench.begin(plant, chain, SensorErrors.NONE, 1, Quantity.BLOWS).run(100, r -> {});
        plant.blowTimesS = new double[] {};
        plant.restart();

        double[] counts =
                Bench.begin(plant, chain, SensorErrors.NONE, 1, Quantity.BLOWS).record(1000, r -> r.blows);

        assertThat(counts).containsOnly(0);
    }
}
