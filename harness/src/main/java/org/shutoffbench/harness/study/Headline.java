package org.shutoffbench.harness.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the first sentence of a report may say.
 *
 * @param finding which sentence
 * @param leaders indices of the strategies it names, leader first; more than one where they cannot be told apart
 * @param worstFamily index of the family on which the leader did worst; -1 where nothing ran
 * @param worst the leader's in-window rate there; null where nothing ran
 * @param differences leader against the other leaders, or against the next in rank where the leader is separated; empty
 *     where there is nothing to compare
 * @param silentMiss the cell with the highest rate of silent misses, of equal ones that with the least mean torque;
 *     null where there is none
 */
public record Headline(
        Finding finding,
        List<Integer> leaders,
        int worstFamily,
        @Nullable Rate worst,
        List<Ranking.WorstFamilyDifference> differences,
        @Nullable SilentMiss silentMiss) {

    public Headline {
        leaders = List.copyOf(leaders);
        differences = List.copyOf(differences);
    }

    /** Which sentence the data allow. */
    public enum Finding {
        /** The leader is told apart from every other strategy. */
        SEPARATED,
        /** The leader and at least one other cannot be told apart. */
        INSEPARABLE,
        /** One strategy ran; there is nothing to compare. */
        ALONE,
        /** No strategy brought more than half of the joints into the window on every family. */
        NONE_SERVES,
        /** Fewer than 50 joints in a cell. */
        TOO_FEW,
        /** No strategy ran on every family. */
        NOTHING_RAN
    }

    /** The cell with the highest rate of silent misses. */
    public record SilentMiss(int strategy, int family, Rate rate) {}
}
