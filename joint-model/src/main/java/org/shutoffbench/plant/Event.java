package org.shutoffbench.plant;

/** What can end a planned step. Each changes one flag of the plant. */
final class Event {
    /** The series has been used up; expand again. */
    static final int NONE = 0;

    static final int CAM_ABOVE = 1;
    static final int CAM_BELOW = 2;
    static final int MOTOR_ABOVE = 3;
    static final int MOTOR_BELOW = 4;
    /** The resting carrier of a coasting tool is turned on. */
    static final int CARRIER_ON = 5;
    /** The resting carrier of a coasting tool is turned back. */
    static final int CARRIER_BACK = 6;

    static final int NUT_SLIPS_ON = 7;
    static final int NUT_SLIPS_BACK = 8;
    static final int NUT_STOPS = 9;
    /** The sliding nut reaches the end of a zone of the joint law. */
    static final int LAW = 10;

    /** The gap between hammer and anvil lug closes. */
    static final int TOUCH = 11;
    /** The lug force falls to zero. */
    static final int PART = 12;
    /** The lug force resumes before the gap has opened. */
    static final int RESUME = 13;
    /** The gap opens. */
    static final int CLEAR = 14;

    private Event() {}
}
