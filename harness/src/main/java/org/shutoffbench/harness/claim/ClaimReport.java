package org.shutoffbench.harness.claim;

import java.io.IOException;
import java.nio.file.Path;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.report.HtmlReport;
import org.shutoffbench.harness.report.Templates;

/** A page about a claim as one HTML file that loads nothing and prints on paper. */
public final class ClaimReport {

    private static final Templates OWN = new Templates(ClaimReport.class);
    private static final Templates REPORT = new Templates(HtmlReport.class);

    private ClaimReport() {}

    private record View(ClaimPage page, String source, String caution, String styles) {}

    /** The page as text; the source says which files it was made from. */
    public static String html(ClaimPage page, String source) {
        return OWN.fill(
                "claim",
                new View(
                        page,
                        source,
                        Caution.TEXT,
                        REPORT.text("palette.css") + REPORT.text("report.css") + OWN.text("claim.css")));
    }

    /**
     * Writes the page, whole or not at all.
     *
     * @throws IOException if the file cannot be written
     */
    public static void write(Path file, ClaimPage page, String source) throws IOException {
        TextFile.write(file, html(page, source));
    }
}
