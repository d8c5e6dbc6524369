package org.shutoffbench.harness.scenario.file;

/**
 * Where something was written.
 *
 * @param file name of the file as the user gave it
 * @param line from 1; 0 for the file as a whole
 */
public record Place(String file, int line) {

    /** The file as a whole. */
    public static Place whole(String file) {
        return new Place(file, 0);
    }

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line;
    }
}
