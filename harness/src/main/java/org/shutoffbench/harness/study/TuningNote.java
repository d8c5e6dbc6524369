package org.shutoffbench.harness.study;

import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.run.TighteningRecord;

/**
 * What settings did on the joints that they were made on, and on validation joints that nothing was chosen by: written into
 * a settings table in words and read back from there.
 *
 * @param made on the joints that the settings were made on
 * @param validated on validation joints
 */
public record TuningNote(Tally made, Tally validated) {

    private static final Pattern TUNED = Pattern.compile(
            "in window (\\d+) of (\\d+) when tuned, (\\d+) of (\\d+) on validation joints; silent misses (\\d+) and (\\d+)");
    private static final Pattern TRAINED = Pattern.compile("in window (\\d+) of (\\d+), silent misses (\\d+)");

    /** Keys of a table that holds one trained strategy. */
    public static final String IN_TRAINING = "joints in training";

    public static final String IN_VALIDATION = "joints in validation";

    /**
     * Joints counted.
     *
     * @param inWindow of them in window
     * @param joints all of them
     * @param silentMisses of them silent misses
     */
    public record Tally(long inWindow, long joints, long silentMisses) {

        /** No joints. */
        public static final Tally NONE = new Tally(0, 0, 0);

        /** One joint. */
        public static Tally of(TighteningRecord record) {
            boolean in = Event.IN_WINDOW.holds(record.outcome(), record.verdict());
            boolean silent = Event.SILENT_MISS.holds(record.outcome(), record.verdict());
            return new Tally(in ? 1 : 0, 1, silent ? 1 : 0);
        }

        /** Joints of both. */
        public Tally plus(Tally other) {
            return new Tally(inWindow + other.inWindow, joints + other.joints, silentMisses + other.silentMisses);
        }

        /** As a table of a trained strategy has it. */
        public String words() {
            return "in window " + inWindow + " of " + joints + ", silent misses " + silentMisses;
        }
    }

    /** As a table of tuned strategies has it. */
    public String words() {
        return String.format(
                Locale.ROOT,
                "in window %d of %d when tuned, %d of %d on validation joints; silent misses %d and %d",
                made.inWindow,
                made.joints,
                validated.inWindow,
                validated.joints,
                made.silentMisses,
                validated.silentMisses);
    }

    /** The note on a strategy among the texts of a settings table; null if there is none. */
    public static @Nullable TuningNote read(Map<String, String> texts, String strategy) {
        Matcher tuned = TUNED.matcher(texts.getOrDefault(strategy, ""));
        if (tuned.find()) {
            return new TuningNote(tally(tuned, 1, 2, 5), tally(tuned, 3, 4, 6));
        }
        Matcher training = TRAINED.matcher(texts.getOrDefault(IN_TRAINING, ""));
        Matcher validation = TRAINED.matcher(texts.getOrDefault(IN_VALIDATION, ""));
        return training.find() && validation.find()
                ? new TuningNote(tally(training, 1, 2, 3), tally(validation, 1, 2, 3))
                : null;
    }

    private static Tally tally(MatchResult found, int inWindow, int joints, int silentMisses) {
        return new Tally(
                Long.parseLong(found.group(inWindow)),
                Long.parseLong(found.group(joints)),
                Long.parseLong(found.group(silentMisses)));
    }
}
