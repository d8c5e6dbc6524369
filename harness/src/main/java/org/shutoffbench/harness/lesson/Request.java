package org.shutoffbench.harness.lesson;

import org.jspecify.annotations.Nullable;

/**
 * What a page asks of the bench.
 *
 * @param action what to do
 * @param knobs for START and TURN
 * @param count blows that the tool is set to, for START, REPEAT and RACE; 0 for none
 * @param blows blows to strike at once, for START
 * @param family index of the family, for RACE
 */
record Request(Action action, @Nullable Knobs knobs, int count, int blows, int family) {

    /** What a page can ask for. */
    enum Action {
        /** A joint from the start. */
        START,
        /** The same joint with other knobs, at the same blow. */
        TURN,
        /** One more blow. */
        BLOW,
        /** Blow after blow. */
        PLAY,
        /** No more. */
        PAUSE,
        /** Thirty joints of the bench family. */
        REPEAT,
        /** All strategies on the same joints. */
        RACE
    }
}
