package org.shutoffbench.harness.record.export;

import java.util.Optional;
import java.util.stream.Stream;

/** Forms in which records leave. */
public enum RecordsFormat {
    CSV("csv"),
    PARQUET("parquet"),
    JSON("json");

    private final String title;

    RecordsFormat(String title) {
        this.title = title;
    }

    /** As a command names it. */
    public String title() {
        return title;
    }

    /** The format of a title. */
    public static Optional<RecordsFormat> titled(String title) {
        return Stream.of(values()).filter(f -> f.title.equals(title)).findFirst();
    }

    /** Whether what this format needs is on the class path; the Parquet library is optional. */
    public boolean isAvailable() {
        if (this != PARQUET) {
            return true;
        }
        try {
            Class.forName("blue.strategic.parquet.ParquetWriter", false, RecordsFormat.class.getClassLoader());
            return true;
        } catch (ClassNotFoundException missing) {
            return false;
        }
    }
}
