package org.shutoffbench.harness.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Text files that are there whole or not at all: written under a temporary name, then moved. */
public final class TextFile {

    private TextFile() {}

    /** Writes UTF-8; makes the folder where it is missing. */
    public static void write(Path file, String text) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        Path temporary = file.resolveSibling(file.getFileName() + ".tmp");
        Files.writeString(temporary, text, StandardCharsets.UTF_8);
        Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
    }
}
