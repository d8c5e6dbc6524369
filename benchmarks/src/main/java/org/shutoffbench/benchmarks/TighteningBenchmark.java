package org.shutoffbench.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.shutoffbench.joint.ClampLaw;
import org.shutoffbench.joint.FreeTorque;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.TorqueTension;
import org.shutoffbench.joint.Yielding;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.plant.Run;
import org.shutoffbench.tool.ImpactTool;
import org.shutoffbench.tool.ReferenceTools;

/**
 * The plant alone: tightenings per second and core. A joint is driven at full level, braked at the first contact of blow 40
 * and followed until the nut is settled.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class TighteningBenchmark {

    private static final double TIME_LIMIT_S = 10;

    /** Reference joints A to D with the light tool, or A with the heavy one. */
    @Param({"A", "B", "C", "D", "A_HEAVY"})
    public String workload = "A";

    /** Blow at whose first contact the tool brakes. */
    @Param("40")
    public int blows = 40;

    private final Run run = new Run(new FastPlant());
    private JointLaw law = joint(312e6, 8, false);
    private ImpactTool tool = ReferenceTools.LIGHT;

    private static JointLaw joint(double stiffnessNPerM, double seatingDeg, boolean lockNut) {
        double pitchM = 1.75e-3;
        double ramp = 2 * Math.PI;
        List<FreeTorque.Piece> insert = lockNut
                ? List.of(
                        new FreeTorque.Piece(Math.PI, Math.PI + ramp, 0, 10 / ramp, 0),
                        FreeTorque.Piece.constantFrom(Math.PI + ramp, 10))
                : List.of();
        return new JointLaw(
                TorqueTension.of(pitchM, 12e-3 - 0.64952 * pitchM, 15.6e-3, 0.12, 0.12),
                new ClampLaw(stiffnessNPerM * pitchM / (2 * Math.PI), 4 * Math.PI, Math.toRadians(seatingDeg)),
                FreeTorque.of(0.2, insert),
                1,
                Yielding.OFF,
                Galling.NONE);
    }

    /** Makes the joint. */
    @Setup
    public void makeJoint() {
        law = switch (workload) {
            case "A", "A_HEAVY" -> joint(312e6, 8, false);
            case "B" -> joint(147e6, 15, false);
            case "C" -> joint(60e6, 40, false);
            case "D" -> joint(312e6, 8, true);
            default -> throw new IllegalArgumentException("no joint is called " + workload);
        };
        tool = workload.equals("A_HEAVY") ? ReferenceTools.HEAVY : ReferenceTools.LIGHT;
    }

    /** One tightening. */
    @Benchmark
    public double tightening() {
        return run.start(law, tool, 1).brakedAtBlow(blows, TIME_LIMIT_S).clampForceN;
    }
}
