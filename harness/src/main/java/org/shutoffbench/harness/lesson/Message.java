package org.shutoffbench.harness.lesson;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.joint.JointLaw;

/** What the bench says to a page. The simple name of a record is the name of its event. */
sealed interface Message {

    /**
     * A joint as the page draws it.
     *
     * @param knobs as they are set
     * @param count blows that the tool is set to; 0 for none
     * @param startDeg where the tool starts, deg past snug
     * @param clamping torque that clamps over angle: pairs of deg past snug and N m
     * @param total torque to turn the nut on over angle, the same way
     * @param windowNm window of the clamping torque
     * @param windowKn the same as clamp force of this joint
     */
    record Joint(
            Knobs knobs,
            int count,
            double startDeg,
            List<List<Double>> clamping,
            List<List<Double>> total,
            List<Double> windowNm,
            List<Double> windowKn)
            implements Message {

        private static final int POINTS = 90;
        private static final double MOST_NM = 130;

        static Joint of(Knobs knobs, int count) {
            JointLaw law = knobs.law();
            double kappaOnM = law.torqueTension().kappaOnM();
            double snugRad = law.clamp().snugAngleRad();
            double endRad = law.clamp().angleForForceRad(MOST_NM / kappaOnM);
            double fromRad = -Math.PI * 2.2;
            List<List<Double>> clamping = new ArrayList<>();
            List<List<Double>> total = new ArrayList<>();
            for (int i = 0; i <= 2 * POINTS; i++) {
                double pastRad = i < POINTS ? fromRad * (1 - (double) i / POINTS) : endRad * (i - POINTS) / POINTS;
                double clampsNm = kappaOnM * law.clamp().forceN(pastRad);
                double freeNm = law.freeTorque().torqueNm(snugRad + pastRad);
                clamping.add(List.of(Math.toDegrees(pastRad), clampsNm));
                total.add(List.of(Math.toDegrees(pastRad), clampsNm + freeNm));
            }
            double low = Knobs.TARGET_NM * (1 - Knobs.WINDOW);
            double high = Knobs.TARGET_NM * (1 + Knobs.WINDOW);
            return new Joint(
                    knobs,
                    count,
                    -Math.toDegrees(snugRad),
                    clamping,
                    total,
                    List.of(low, high),
                    List.of(low / kappaOnM / 1000, high / kappaOnM / 1000));
        }
    }

    /**
     * The start and every blow up to now; after a slider moved, of the joint as it is now.
     *
     * @param done whether the tool says done
     * @param stopped whether it strikes no more
     */
    record Frames(List<BlowFrame> frames, boolean done, boolean stopped) implements Message {}

    /** One more blow. */
    record Frame(BlowFrame frame, boolean done, boolean stopped) implements Message {}

    /** Thirty joints of the bench family by the count. */
    record Repeats(int count, List<LessonBench.Repeat> repeats) implements Message {}

    /** A race under way, or at its end. */
    record Race(LessonBench.Progress progress) implements Message {}

    /** Whether blows follow one another by themselves. */
    record Playing(boolean playing) implements Message {}
}
