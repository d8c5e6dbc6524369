package org.shutoffbench.harness.lesson;

import java.util.List;
import org.shutoffbench.joint.Galling;
import org.shutoffbench.joint.JointLaw;
import org.shutoffbench.joint.JointSpecification;
import org.shutoffbench.joint.Resistance;
import org.shutoffbench.joint.YieldLimit;
import org.shutoffbench.joint.thread.ScrewThread;

/**
 * What the class can turn: one joint and the tool's battery. Everything else stays as on the bench joint: M12, snug after two
 * turns, seated over 8 degrees, bolt elastic (all assumed).
 *
 * @param prevailingNm torque of the lock nut's insert, N m; 0 for a plain nut
 * @param stiffnessKnPerMm joint stiffness, kN/mm
 * @param friction in the thread and under the nut
 * @param battery supply over nominal
 */
record Knobs(double prevailingNm, double stiffnessKnPerMm, double friction, double battery) {

    /** Clamping torque that the joint needs, N m, and the window round it. */
    static final double TARGET_NM = 84;

    static final double WINDOW = 0.15;

    private static final double TURN_RAD = 2 * Math.PI;
    private static final double SNUG_RAD = 2 * TURN_RAD;
    private static final ScrewThread THREAD = ScrewThread.metric(12e-3, 1.75e-3);
    private static final double BEARING_DIAMETER_M = 15.07e-3;

    /**
     * A slider.
     *
     * @param name as in the JSON
     * @param step between two positions
     */
    record Slider(String name, String title, String unit, double least, double most, double step) {}

    /** The sliders and their ranges. */
    static final List<Slider> SLIDERS = List.of(
            new Slider("prevailingNm", "prevailing", "N\u00b7m", 0, 14, 0.5),
            new Slider("stiffnessKnPerMm", "stiffness", "kN/mm", 60, 400, 10),
            new Slider("friction", "friction", "", 0.09, 0.18, 0.01),
            new Slider("battery", "battery", "%", 0.75, 1, 0.01));

    /** A hard joint with a plain nut. */
    static final Knobs BENCH_JOINT = new Knobs(0, 300, 0.13, 1);

    /** The same joint with a lock nut: one thing changes. */
    static final Knobs LOCK_NUT = new Knobs(10, 300, 0.13, 1);

    Knobs {
        require(prevailingNm, SLIDERS.get(0));
        require(stiffnessKnPerMm, SLIDERS.get(1));
        require(friction, SLIDERS.get(2));
        require(battery, SLIDERS.get(3));
    }

    private static void require(double value, Slider slider) {
        if (!(value >= slider.least() - 1e-9 && value <= slider.most() + 1e-9)) {
            throw new IllegalArgumentException(
                    slider.name() + " must lie between " + slider.least() + " and " + slider.most());
        }
    }

    /** The joint. */
    JointLaw law() {
        List<Resistance> resistances = prevailingNm > 0
                ? List.of(new Resistance.LockingElement(prevailingNm, Resistance.Begin.beforeSnug(TURN_RAD), TURN_RAD))
                : List.of();
        return new JointSpecification(
                        THREAD,
                        BEARING_DIAMETER_M,
                        friction,
                        friction,
                        stiffnessKnPerMm * 1e6,
                        Math.toRadians(8),
                        SNUG_RAD,
                        0.2,
                        JointSpecification.ASSUMED_STATIC_RATIO,
                        YieldLimit.OFF,
                        resistances,
                        Galling.NONE)
                .law();
    }
}
