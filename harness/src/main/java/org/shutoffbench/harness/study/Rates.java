package org.shutoffbench.harness.study;

/**
 * The rates of a cell, all per joint run.
 *
 * @param inWindow outcome in window
 * @param silentMiss REACHED and unseated or low
 * @param falseStop REACHED and high, yielded or fractured
 * @param falseAlarm NOT_REACHED and in window
 * @param undecided verdict UNSURE
 * @param unseated outcome unseated
 * @param low outcome low (unseated joints not counted)
 * @param high outcome high
 * @param yielded outcome yielded
 * @param fractured outcome fractured
 * @param reached verdict REACHED
 */
public record Rates(
        Rate inWindow,
        Rate silentMiss,
        Rate falseStop,
        Rate falseAlarm,
        Rate undecided,
        Rate unseated,
        Rate low,
        Rate high,
        Rate yielded,
        Rate fractured,
        Rate reached) {}
