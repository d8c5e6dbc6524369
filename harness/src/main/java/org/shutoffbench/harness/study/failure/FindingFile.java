package org.shutoffbench.harness.study.failure;

import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Findings as files: fields in the order of the records, no time and no host. */
public final class FindingFile {

    /** What {@code rare} found. */
    public static final String RARE = "rare.json";

    /** What {@code sensitivity} found. */
    public static final String SENSITIVITY = "sensitivity.json";

    /** What {@code weakest} found. */
    public static final String WEAKEST = "weakest.json";

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                    .build())
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private FindingFile() {}

    /** The text of a finding, ending in a line feed. */
    public static String text(Object finding) {
        return MAPPER.writeValueAsString(finding).replace("\r\n", "\n") + "\n";
    }
}
