package org.shutoffbench.harness.scenario.file;

/** What a file is for, so that messages can say what belongs into it. */
public enum FileKind {
    SCENARIO("scenario file", "bench: 1"),
    CLAIM("claim file", "claim: 1");

    private final String title;
    private final String firstLine;

    FileKind(String title, String firstLine) {
        this.title = title;
        this.firstLine = firstLine;
    }

    String title() {
        return title;
    }

    String beginning() {
        return "begin with the line \"" + firstLine + "\"";
    }
}
