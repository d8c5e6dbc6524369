package org.shutoffbench.harness.record;

import java.util.List;
import org.shutoffbench.harness.run.Decimals;
import org.shutoffbench.harness.run.Trace.Blow;

/** A trace as a file: one row per blow, and the end state in a comment line at the end. */
public final class TraceFile {

    private static final String HEADER =
            "blow,time_s,hammer_speed_rad_s,blow_energy_J,nut_angle_deg,clamp_force_N,torque_to_move_Nm\n";

    private TraceFile() {}

    /**
     * The text of a trace.
     *
     * @param blows all of them, in order
     * @param end the end state in words, one line
     */
    public static String text(List<Blow> blows, String end) {
        StringBuilder text = new StringBuilder(HEADER);
        for (Blow blow : blows) {
            text.append(blow.blow());
            append(text, blow.timeS(), 7);
            append(text, blow.hammerSpeedRadPerS(), 4);
            append(text, blow.energyJ(), 5);
            append(text, Math.toDegrees(blow.nutAngleRad()), 6);
            append(text, blow.clampForceN(), 3);
            append(text, blow.torqueToMoveNm(), 5);
            text.append('\n');
        }
        return text.append("# ").append(end).append('\n').toString();
    }

    private static void append(StringBuilder text, double value, int digits) {
        text.append(',');
        Decimals.append(text, value, digits);
    }
}
