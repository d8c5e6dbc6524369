package org.shutoffbench.harness.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Copies of the jars that a scenario's strategies come from, so that a resolved scenario in another folder can still be
 * read, also after the jar has been built anew.
 */
public final class JarCopies {

    /** Folder of the copies, seen from the resolved scenario. */
    public static final String FOLDER = "jars";

    private static final int HASH_DIGITS = 12;

    private JarCopies() {}

    /**
     * Copies the jars into a folder.
     *
     * @param folder where the resolved scenario will lie
     * @return the scenario that names the copies; the same one where it names no jar
     * @throws IOException if a jar cannot be copied, or is not the one that the scenario was read with
     */
    public static Scenario beside(Scenario scenario, Path folder) throws IOException {
        List<StrategyEntry> entries = new ArrayList<>();
        for (StrategyEntry entry : scenario.strategies()) {
            StrategyEntry.External external = entry.external();
            entries.add(external == null ? entry : entry.from(copy(external, folder)));
        }
        return scenario.with(entries);
    }

    private static StrategyEntry.External copy(StrategyEntry.External external, Path folder) throws IOException {
        byte[] jar = Files.readAllBytes(external.file());
        if (!Sha256.of(jar).equals(external.sha256())) {
            throw new IOException(external.file() + " was changed while it was in use");
        }
        String written = FOLDER + "/" + external.sha256().substring(0, HASH_DIGITS) + ".jar";
        Path file = folder.resolve(FOLDER).resolve(Path.of(written).getFileName());
        Files.createDirectories(folder.resolve(FOLDER));
        Files.write(file, jar);
        return new StrategyEntry.External(external.className(), written, file, external.sha256());
    }
}
