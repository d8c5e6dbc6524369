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

    @Override
    public String toString() {
        return place + ": " + (key.isEmpty() ? "" : key + ": ") + found + (remedy.isEmpty() ? "" : "; " + remedy);
    }
}
