package org.shutoffbench.harness.record;

import java.util.Optional;
import java.util.stream.Stream;
import org.shutoffbench.harness.run.TighteningRecord;

/** The columns of the outcomes file, in its order; what every other form of the records is made from. */
public enum OutcomeColumn {
    FAMILY("family", Kind.TEXT, "", "family of joints, as the scenario names it"),
    JOINT("joint", Kind.WHOLE, "", "joint number within the family, from 0"),
    LOT("lot", Kind.WHOLE, "", "lot that the joint's parts are of, from 0"),
    PIECE("piece", Kind.WHOLE, "", "piece, from 0"),
    REPEAT("repeat", Kind.WHOLE, "", "how often this piece was tightened before"),
    TOOL("tool", Kind.WHOLE, "", "specimen of the tool, from 0"),
    STRATEGY("strategy", Kind.TEXT, "", "shutoff strategy, as the scenario names it"),
    SETTINGS("settings", Kind.TEXT, "", "name of the strategy's settings"),
    END_REASON("end_reason", Kind.TEXT, "", "why the tightening ended"),
    VERDICT("verdict", Kind.TEXT, "", "what the strategy claims"),
    OUTCOME("outcome", Kind.TEXT, "", "what really happened, judged 0.5 s after the stop command acts"),
    CLAMP_FORCE("clamp_force_N", Kind.FORCE, "N", "clamp force, truth, before embedding"),
    CLAMPING_TORQUE(
            "clamping_torque_Nm",
            Kind.TORQUE_OR_ANGLE,
            "N*m",
            "torque that clamps, truth; running and prevailing torque not counted"),
    PREVAILING_TORQUE(
            "prevailing_torque_Nm",
            Kind.TORQUE_OR_ANGLE,
            "N*m",
            "running and prevailing torque at the last nut angle, truth"),
    NUT_ANGLE("nut_angle_deg", Kind.TORQUE_OR_ANGLE, "deg", "nut angle past snug, truth; negative before snug"),
    BLOWS("blows", Kind.WHOLE, "", "blows struck, spin-up and run-on included"),
    TIME("time_s", Kind.TIME, "s", "time to the stop command"),
    RUN_ON_ANGLE("run_on_angle_deg", Kind.TORQUE_OR_ANGLE, "deg", "nut angle after the stop command"),
    GUARD_STEPS(
            "guard_steps",
            Kind.WHOLE,
            "",
            "events that the plant could not bring in order and stepped over; 0 where its motion is exact");

    /** What a column holds. */
    public enum Kind {
        TEXT(0),
        /** Whole numbers from 0. */
        WHOLE(0),
        FORCE(TighteningRecord.FORCE_DIGITS),
        TORQUE_OR_ANGLE(TighteningRecord.TORQUE_AND_ANGLE_DIGITS),
        TIME(TighteningRecord.TIME_DIGITS);

        private final int digits;

        Kind(int digits) {
            this.digits = digits;
        }

        /** Decimals that are written. */
        public int digits() {
            return digits;
        }

        /** Whether the column holds numbers with decimals, which may be missing. */
        public boolean isDecimal() {
            return digits > 0;
        }
    }

    private final String title;
    private final Kind kind;
    private final String unit;
    private final String meaning;

    OutcomeColumn(String title, Kind kind, String unit, String meaning) {
        this.title = title;
        this.kind = kind;
        this.unit = unit;
        this.meaning = meaning;
    }

    /** Name in the header line, unit included. */
    public String title() {
        return title;
    }

    public Kind kind() {
        return kind;
    }

    /** Unit; empty for none. */
    public String unit() {
        return unit;
    }

    /** What the column says, for people. */
    public String meaning() {
        return meaning;
    }

    /** Whether no value of the column is below 0. */
    public boolean isNeverNegative() {
        return kind == Kind.WHOLE || this == CLAMP_FORCE || this == TIME;
    }

    /** The column of that title. */
    public static Optional<OutcomeColumn> titled(String title) {
        return Stream.of(values()).filter(c -> c.title.equals(title)).findFirst();
    }
}
