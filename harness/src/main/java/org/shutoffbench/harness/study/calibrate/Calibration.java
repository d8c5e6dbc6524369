package org.shutoffbench.harness.study.calibrate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.statistics.descriptive.Quantile;
import org.shutoffbench.controller.strategy.BlowSettings;
import org.shutoffbench.controller.strategy.adaptive.ToolSettings;
import org.shutoffbench.tool.ImpactTool;

/**
 * What the calibration bench learned of a tool, as settings of the strategies that ask for it.
 *
 * @param settings values by the settings' names
 */
public record Calibration(Map<String, Double> settings) {

    /** Share of blows with a slower, and with a faster carrier than the knots of energy cover. */
    private static final double OUTSIDE = 0.005;

    /** A curve carried on beyond the last blow that was seen ends here. */
    private static final double LEAST_SHARE = 0.05;

    public Calibration {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }

    /** Strikes a number of joints and learns from them. */
    public static Calibration of(ImpactTool tool, int joints) {
        return learn(tool, strike(tool, joints, 0));
    }

    static StrikingBench strike(ImpactTool tool, int joints, int skip) {
        double[] levels = new double[ToolSettings.TRIMS];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = ToolSettings.levelOfTrim(i);
        }
        StrikingBench bench = new StrikingBench(tool, levels);
        PlainJoint.set(joints, skip).forEach(bench::strike);
        return bench;
    }

    private static Calibration learn(ImpactTool tool, StrikingBench bench) {
        Map<String, Double> settings = new LinkedHashMap<>();
        List<StruckBlow> usual =
                bench.blows.stream().filter(blow -> !blow.isFirst()).toList();
        double[] ends = Quantile.withDefaults()
                .evaluate(
                        usual.stream().mapToDouble(StruckBlow::meanSpeedRadPerS).toArray(), OUTSIDE, 1 - OUTSIDE);
        double slowest = rounded(ends[0]);
        double step = rounded((ends[1] - ends[0]) / (ToolSettings.ENERGIES - 1));
        putEnergies(settings, usual, slowest, step);
        putFirstBlow(settings, bench.blows);
        putRundown(settings, bench.rundowns);
        settings.put(ToolSettings.SOCKET_STIFFNESS, tool.socket().stiffnessNmPerRad());
        putTransmissions(settings, usual, tool.socket().stiffnessNmPerRad());
        putTrims(settings, bench.trimmed, slowest, step * (ToolSettings.ENERGIES - 1));
        putPulse(settings, usual);
        putDataSheet(settings, tool);
        putSimple(settings, usual);
        return new Calibration(settings);
    }

    private static void putEnergies(Map<String, Double> settings, List<StruckBlow> usual, double slowest, double step) {
        HatFit energy = new HatFit(slowest, step, ToolSettings.ENERGIES);
        usual.forEach(blow -> energy.add(blow.meanSpeedRadPerS(), blow.hammerEnergyJ()));
        settings.put(ToolSettings.SLOWEST_SPEED, slowest);
        settings.put(ToolSettings.SPEED_STEP, step);
        double[] energies = energy.values();
        for (int i = 0; i < energies.length; i++) {
            settings.put(ToolSettings.energyAt(i), rounded(energies[i]));
        }
    }

    private static void putFirstBlow(Map<String, Double> settings, List<StruckBlow> blows) {
        HatFit line = new HatFit(ToolSettings.REFERENCE_SPEED, 1, 2);
        blows.stream()
                .filter(StruckBlow::isAfterRundown)
                .forEach(blow -> line.add(blow.contactSpeedRadPerS(), blow.hammerEnergyJ()));
        double[] energies = line.values();
        double variance = mean(blows.stream().filter(StruckBlow::isFirst).toList(), blow -> {
            double said = HatFit.at(energies, ToolSettings.REFERENCE_SPEED, 1, blow.contactSpeedRadPerS());
            return square(said / blow.hammerEnergyJ() - 1);
        });
        settings.put(ToolSettings.FIRST_BLOW, rounded(energies[0]));
        settings.put(ToolSettings.FIRST_BLOW_SLOPE, rounded(energies[1] - energies[0]));
        settings.put(ToolSettings.FIRST_BLOW_SPREAD, rounded(Math.sqrt(variance)));
    }

    /** The energy that a run-down brings goes with the square of the carrier's speed. */
    private static void putRundown(Map<String, Double> settings, List<Rundown> rundowns) {
        ToDoubleFunction<Rundown> perSquare = run -> run.energyJ() / square(run.highestSpeedRadPerS());
        double mean = mean(rundowns, perSquare);
        double variance = mean(rundowns, run -> square(perSquare.applyAsDouble(run) - mean));
        settings.put(ToolSettings.RUNDOWN, rounded(square(ToolSettings.REFERENCE_SPEED) * mean));
        settings.put(ToolSettings.RUNDOWN_SPREAD, rounded(Math.sqrt(variance) / mean));
    }

    private static void putTransmissions(
            Map<String, Double> settings, List<StruckBlow> usual, double socketStiffnessNmPerRad) {
        HatFit transmission = new HatFit(0, 1, ToolSettings.TRANSMISSIONS);
        usual.forEach(blow -> transmission.add(knot(blow.tau(socketStiffnessNmPerRad)), blow.transmission()));
        double[] shares = transmission.values();
        for (int i = 0; i < shares.length; i++) {
            settings.put(ToolSettings.transmissionAt(i), rounded(Math.max(LEAST_SHARE, shares[i])));
        }
    }

    /** Torque after a blow goes with a power of its pulse's area. */
    private static void putPulse(Map<String, Double> settings, List<StruckBlow> usual) {
        HatFit line = new HatFit(0, 1, 2);
        List<StruckBlow> heard = usual.stream()
                .filter(blow -> blow.pulseAreaNms() > 0
                        && blow.torqueAfterNm() > ToolSettings.LEAST_PULSE_NM
                        && blow.torqueAfterNm() < ToolSettings.GREATEST_PULSE_NM)
                .toList();
        heard.forEach(blow -> line.add(logArea(blow), StrictMath.log(blow.torqueAfterNm())));
        double[] ends = line.values();
        double variance = mean(
                heard, blow -> square(HatFit.at(ends, 0, 1, logArea(blow)) - StrictMath.log(blow.torqueAfterNm())));
        settings.put(ToolSettings.PULSE_TORQUE, rounded(StrictMath.exp(ends[0])));
        settings.put(ToolSettings.PULSE_EXPONENT, rounded(ends[1] - ends[0]));
        settings.put(ToolSettings.PULSE_SPREAD, rounded(Math.sqrt(variance)));
    }

    private static double logArea(StruckBlow blow) {
        return StrictMath.log(blow.pulseAreaNms() / ToolSettings.REFERENCE_AREA);
    }

    /** One straight line over the carrier's speed for every drive level. */
    private static void putTrims(Map<String, Double> settings, List<TrimmedBlow> trimmed, double slowest, double span) {
        double below = 0;
        double belowFast = 0;
        double squares = 0;
        for (int i = 0; i < ToolSettings.TRIMS; i++) {
            double level = ToolSettings.levelOfTrim(i);
            HatFit line = new HatFit(slowest, span, 2);
            List<TrimmedBlow> here = trimmed.stream()
                    .filter(blow -> Math.abs(blow.driveLevel() - level) < 1e-6)
                    .toList();
            here.forEach(blow -> line.add(blow.meanSpeedRadPerS(), blow.share()));
            double[] shares = line.values();
            for (TrimmedBlow blow : here) {
                double said = HatFit.at(shares, slowest, span, blow.meanSpeedRadPerS());
                squares += square(said - blow.share());
            }
            below = Math.max(below, Math.min(1, shares[0]));
            belowFast = Math.max(belowFast, Math.min(1, shares[1]));
            settings.put(ToolSettings.trimAt(i, false), rounded(below));
            settings.put(ToolSettings.trimAt(i, true), rounded(belowFast));
        }
        settings.put(ToolSettings.LAST_BLOW_SPREAD, rounded(Math.sqrt(squares / trimmed.size())));
    }

    private static void putDataSheet(Map<String, Double> settings, ImpactTool tool) {
        settings.put(ToolSettings.STALL_TORQUE, tool.motor().stallTorqueNm());
        settings.put(ToolSettings.TORQUE_LIMIT, tool.motor().torqueLimitNm());
        settings.put(ToolSettings.NO_LOAD_SPEED, tool.motor().noLoadSpeedRadPerS());
        settings.put(ToolSettings.HOUSING_INERTIA, tool.housing().inertiaKgM2());
        settings.put(ToolSettings.ARM_DAMPING, tool.housing().dampingNmSPerRad());
        settings.put(ToolSettings.ARM_STIFFNESS, tool.housing().stiffnessNmPerRad());
    }

    /** What strategies without curves know of a tool: a line for the energy and one share for every torque. */
    private static void putSimple(Map<String, Double> settings, List<StruckBlow> usual) {
        HatFit energy = new HatFit(0, 1, 2);
        usual.forEach(blow -> energy.add(blow.contactSpeedRadPerS(), blow.hammerEnergyJ()));
        double[] ends = energy.values();
        settings.put(BlowSettings.ENERGY_AT_REST, rounded(ends[0]));
        settings.put(BlowSettings.ENERGY_PER_SPEED, rounded(ends[1] - ends[0]));
        settings.put(BlowSettings.TRANSMISSION, rounded(mean(usual, StruckBlow::transmission)));
        settings.put(BlowSettings.WORK, rounded(mean(usual, StruckBlow::workJ)));
    }

    /** Blow energy that the calibration says, J. */
    double blowEnergyJ(double meanSpeedRadPerS) {
        return HatFit.at(
                values(ToolSettings.ENERGIES, ToolSettings::energyAt),
                value(ToolSettings.SLOWEST_SPEED),
                value(ToolSettings.SPEED_STEP),
                meanSpeedRadPerS);
    }

    /** Transmission that the calibration says. */
    double transmission(double tau) {
        return HatFit.at(values(ToolSettings.TRANSMISSIONS, ToolSettings::transmissionAt), 0, 1, knot(tau));
    }

    private static double knot(double tau) {
        return ToolSettings.knotOfTau((float) tau);
    }

    double value(String name) {
        Double value = settings.get(name);
        if (value == null) {
            throw new IllegalStateException("no setting is called \"" + name + "\"");
        }
        return value;
    }

    private double[] values(int count, IntFunction<String> name) {
        return IntStream.range(0, count).mapToDouble(i -> value(name.apply(i))).toArray();
    }

    private static <T> double mean(List<T> all, ToDoubleFunction<T> number) {
        return all.stream().mapToDouble(number).average().orElseThrow();
    }

    private static double square(double x) {
        return x * x;
    }

    /** Four significant figures: more than the tools of a series have in common. */
    private static double rounded(double x) {
        return new BigDecimal(x)
                .round(new MathContext(4, RoundingMode.HALF_EVEN))
                .doubleValue();
    }
}
