package org.shutoffbench.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.plant.FastPlant;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.ReferencePlant;
import org.shutoffbench.plant.Run;

/** Prints every tracked figure and ratio from one process; {@code ratios.sh} adds the host's facts. */
public final class BudgetRatios {

    private static final int BLOWS = 40;
    private static final double TIME_LIMIT_S = 10;
    private static final double ACCURACY = 1e-4;

    private BudgetRatios() {}

    /**
     * Measures and prints.
     *
     * @param arguments parts to measure, of plant, loop and threads; all if there are none
     */
    public static void main(String[] arguments) throws InterruptedException {
        List<String> parts = arguments.length == 0 ? List.of("plant", "loop", "threads") : List.of(arguments);
        if (parts.contains("plant")) {
            plantAlone();
        }
        if (parts.contains("loop")) {
            closedLoop();
        }
        if (parts.contains("threads")) {
            TwoThreads.print();
        }
    }

    private static double clampForceN(Plant plant, ReferenceJoint joint) {
        return new Run(plant).start(joint.law(), joint.tool(), 1).brakedAtBlow(BLOWS, TIME_LIMIT_S).clampForceN;
    }

    private static void plantAlone() {
        CpuTime time = new CpuTime();
        List<ReferenceJoint> joints = ReferenceJoint.ALL;
        FastPlant fast = new FastPlant();
        for (ReferenceJoint joint : joints) {
            time.add(() -> clampForceN(fast, joint));
        }
        double tolerance = loosestTolerance();
        ReferencePlant general = new ReferencePlant(tolerance);
        int ofGeneral = time.add(() -> clampForceN(general, ReferenceJoint.A));
        double[] costS = time.measure();
        for (int i = 0; i < joints.size(); i++) {
            System.out.printf(
                    "plant alone, joint %s: %.0f per second and core%n",
                    joints.get(i).name(), 1 / costS[i]);
        }
        System.out.printf(
                "general integrator at the loosest tolerance that keeps %.0e on joint A (%.0e): %.1f per second and"
                        + " core%n",
                ACCURACY, tolerance, 1 / costS[ofGeneral]);
        System.out.printf("fast plant to general integrator: %.0f%n", costS[ofGeneral] / costS[0]);
    }

    /** The loosest tolerance from which on the general integrator stays within the accuracy on joint A. */
    private static double loosestTolerance() {
        double exact = clampForceN(new ReferencePlant(), ReferenceJoint.A);
        double loosest = ReferencePlant.TOLERANCE;
        for (double tolerance = 1e-9; tolerance < 1e-2; tolerance *= 10) {
            double error = Math.abs(clampForceN(new ReferencePlant(tolerance), ReferenceJoint.A) / exact - 1);
            if (!(error < ACCURACY)) {
                break;
            }
            loosest = tolerance;
        }
        return loosest;
    }

    private static void closedLoop() {
        CpuTime time = new CpuTime();
        LoopWorkload trivial = new LoopWorkload(LoopWorkload.JOINT_A, List.of(new LoopWorkload.Trivial(BLOWS)));
        LoopWorkload adaptive = new LoopWorkload(LoopWorkload.DEMO, List.of(LoopWorkload.ours("adaptive estimation")));
        List<StrategyFactory> six = LoopWorkload.constantDrive();
        List<LoopWorkload> loops =
                new ArrayList<>(List.of(trivial, adaptive, new LoopWorkload(LoopWorkload.DEMO, six)));
        six.forEach(one -> loops.add(new LoopWorkload(LoopWorkload.DEMO, List.of(one))));
        // each execution covers the same joints, so that costs compare
        loops.forEach(loop -> time.add(() -> loop.tightenFromStart(LoopWorkload.JOINTS_PER_EXECUTION)));
        double[] costS = time.measure();
        for (int i = 0; i < costS.length; i++) {
            costS[i] /= LoopWorkload.JOINTS_PER_EXECUTION;
        }
        System.out.printf(
                "closed loop, trivial strategy on joint A braked at blow 40: %.0f per second and core%n", 1 / costS[0]);
        System.out.printf(
                "closed loop, adaptive estimation on the demo families: %.0f per second and core%n", 1 / costS[1]);
        double dearest = 0;
        for (int i = 0; i < six.size(); i++) {
            double alone = costS[3 + i];
            System.out.printf("  %s alone: %.0f%n", six.get(i).descriptor().name(), 1 / alone);
            dearest = Math.max(dearest, alone);
        }
        System.out.printf("six constant-drive strategies together: %.0f%n", 1 / costS[2]);
        System.out.printf("six together cost %.2f times the dearest alone%n", costS[2] / dearest);
    }
}
