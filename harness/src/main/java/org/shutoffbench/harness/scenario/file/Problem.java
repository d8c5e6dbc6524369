package org.shutoffbench.harness.scenario.file;

/**
 * One thing that is wrong with a scenario file.
 *
 * @param place file and line
 * @param key full key, for example {@code families.hard plain.stiffness}; empty for the file as a whole
 * @param found what was found
 * @param remedy what is allowed, or the nearest valid key
 */
public record Problem(Place place, String key, String found, String remedy) {

    private static final int LONGEST = 1200;

    /** Texts come from files: control characters are evened out, so that one problem is one line on any terminal. */
    public Problem {
        key = oneLine(key);
        found = oneLine(found);
        remedy = oneLine(remedy);
    }

    private static String oneLine(String text) {
        String line = text.replaceAll("[\\p{Cntrl}\\u0080-\\u009f\\u2028\\u2029]+", " ")
                .strip();
        return line.length() > LONGEST ? line.substring(0, LONGEST) + "..." : line;
    }

    @Override
    public String toString() {
        return place + ": " + (key.isEmpty() ? "" : key + ": ") + found + (remedy.isEmpty() ? "" : "; " + remedy);
    }
}
