package org.shutoffbench.harness.record.export;

import java.io.Closeable;
import java.io.IOException;
import org.shutoffbench.harness.run.TighteningRecord;

/** A file that records go into, one by one. */
interface RecordSink extends Closeable {

    /** Writes one record. */
    void write(TighteningRecord row) throws IOException;
}
