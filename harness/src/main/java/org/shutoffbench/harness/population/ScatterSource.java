package org.shutoffbench.harness.population;

import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import org.shutoffbench.draw.Stream;
import org.shutoffbench.harness.scenario.Level;

/**
 * One source of scatter: one number drawn at one level.
 *
 * @param group what it belongs to: joint, tool, sensors, supply, operator or audit
 * @param name of the number, for example {@code friction mu_th}
 * @param stream of the draws at its level
 * @param level what shares one draw
 * @param draw its number within the stream: made of the name alone, so that no other key of a scenario changes it
 */
public record ScatterSource(Group group, String name, Stream stream, Level level, int draw) {

    /** A source by its name. */
    public static ScatterSource of(Group group, String name, Stream stream, Level level) {
        CRC32 crc = new CRC32();
        crc.update(name.getBytes(StandardCharsets.UTF_8));
        return new ScatterSource(group, name, stream, level, (int) crc.getValue());
    }

    /** What a source of scatter belongs to. */
    public enum Group {
        JOINT,
        TOOL,
        SENSORS,
        SUPPLY,
        OPERATOR,
        AUDIT
    }

    /** For people, for example {@code friction mu_th (lot)}. */
    public String title() {
        return name + " (" + level.title() + ")";
    }
}
