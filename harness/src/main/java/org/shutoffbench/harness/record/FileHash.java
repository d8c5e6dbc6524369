package org.shutoffbench.harness.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of files, lower-case hexadecimal: by it a signer sees that a file is the one that was signed. */
public final class FileHash {

    private FileHash() {}

    /** The hash of a file's bytes. */
    public static String of(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file);
                DigestInputStream digest = new DigestInputStream(bytes, MessageDigest.getInstance("SHA-256"))) {
            byte[] buffer = new byte[1 << 16];
            while (digest.read(buffer) >= 0) {
                // reading feeds the digest
            }
            return HexFormat.of().formatHex(digest.getMessageDigest().digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform must have SHA-256", e);
        }
    }
}
