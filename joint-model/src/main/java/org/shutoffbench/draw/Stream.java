package org.shutoffbench.draw;

/** What a draw is for. Streams of one key are independent of each other; the index counts at the stream's own level. */
public enum Stream {
    /** Coating and lubricant of a lot; index: lot. */
    LOT(1),
    /** A joint; index: piece. */
    PIECE(2),
    /** The same joint once more; index: repeat. */
    REPEAT(3),
    /** A tool with its sensors' errors; index: tool. */
    TOOL(4),
    /** Sensor noise of one run; index: run. */
    SENSOR(5),
    /** The person who holds the tool; index: run. */
    OPERATOR(6),
    /** A later audit of the joint; index: run. */
    AUDIT(7);

    private final int code;

    Stream(int code) {
        this.code = code;
    }

    /** Part of the counter of every draw; never changes, or old results could not be had again. */
    int code() {
        return code;
    }
}
