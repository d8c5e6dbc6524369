package org.shutoffbench.harness.scenario;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.shutoffbench.harness.scenario.file.Overlay;
import org.shutoffbench.harness.scenario.file.ScenarioException;
import org.shutoffbench.harness.scenario.file.TreeReader;

/** Scenario files: read, checked, written out in full. */
public final class ScenarioFile {

    private final StrategyDirectory directory;

    /** Reads files whose strategies are found in a directory. */
    public ScenarioFile(StrategyDirectory directory) {
        this.directory = directory;
    }

    /**
     * Reads a scenario, all that it is based on and its settings tables.
     *
     * @throws ScenarioException with everything that is wrong with it
     */
    public Scenario read(Path path) {
        return new ScenarioReader(Overlay.read(path), directory, true).read();
    }

    /**
     * The same without its settings tables, which may not exist yet: every strategy has the settings of its own line or its
     * defaults.
     *
     * @throws ScenarioException with everything that is wrong with it
     */
    public Scenario readWithoutTables(Path path) {
        return new ScenarioReader(Overlay.read(path), directory, false).read();
    }

    /**
     * Reads a scenario that is a text of its own, based on no other file.
     *
     * @param name stands for the file in messages; paths in the text count from its folder
     * @throws ScenarioException with everything that is wrong with it
     */
    public Scenario parse(String name, String text) {
        return new ScenarioReader(TreeReader.parse(name, text), directory, true).read();
    }

    /** The scenario with every key resolved: itself a scenario file, and one that gives the same results. */
    public static String resolved(Scenario scenario) {
        return new ScenarioText(scenario).toString();
    }

    /** SHA-256 of the resolved text, in lower-case hexadecimal: the same for the same results. */
    public static String hash(Scenario scenario) {
        return Sha256.of(resolved(scenario).getBytes(StandardCharsets.UTF_8));
    }
}
