package org.shutoffbench.harness.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The root seed of a finished run, from its provenance. */
public final class RunSeed {

    private RunSeed() {}

    /**
     * Reads it.
     *
     * @throws FolderRefusedException where the file names none
     */
    public static long read(Path provenance) throws IOException {
        try {
            JsonNode root = JsonMapper.builder().build().readTree(Files.readString(provenance));
            if (root.path("seed").isIntegralNumber()) {
                return root.path("seed").asLong();
            }
        } catch (JacksonException damaged) {
            throw new FolderRefusedException(provenance + " is damaged: " + damaged.getOriginalMessage());
        }
        throw new FolderRefusedException(provenance + " names no seed; run the scenario again with --overwrite");
    }
}
