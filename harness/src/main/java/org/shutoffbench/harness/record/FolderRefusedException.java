package org.shutoffbench.harness.record;

import java.io.IOException;

/** The folder named for a run cannot be used; the message says why and what to do. An input error. */
public final class FolderRefusedException extends IOException {

    private static final long serialVersionUID = 1L;

    public FolderRefusedException(String message) {
        super(message);
    }
}
