package org.shutoffbench.harness.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shutoffbench.harness.browser.Browser;

/** The pages of a plan and of two judgements side by side, opened from disk. */
class ClaimPageBrowserTest {

    private static final Path EXAMPLES = Path.of("../docs/examples/claims");

    /** A4 upright less its margins, at 96 px an inch. */
    private static final int PAPER = 688;

    @TempDir
    static Path folder;

    private static Browser browser;

    @BeforeAll
    static void writePages() throws IOException {
        Claim planned = ClaimFile.read(EXAMPLES.resolve("any-joint.yaml"));
        ClaimReport.write(folder.resolve("plan.html"), ClaimPlan.of(planned).page(), "any-joint.yaml");
        Claim shifted = ClaimFile.read(EXAMPLES.resolve("mean-shift.yaml"));
        Path measured = EXAMPLES.resolve("mean-shift.csv");
        ClaimReport.write(
                folder.resolve("judge.html"),
                ClaimDesk.judge(List.of(shifted), List.of(measured, measured), null, false),
                "mean-shift.yaml");
        browser = Browser.open(1280, 900);
    }

    @AfterAll
    static void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"plan", "judge"})
    void isReadableByEveryoneInLightDarkNarrowAndWide(String page) {
        try (Browser dark = Browser.open(1280, 900)) {
            dark.driver().get(folder.resolve(page + ".html").toUri().toString());
            assertThat(dark.violations()).isEmpty();
            dark.dark();
            assertThat(dark.violations()).isEmpty();
            for (int width : new int[] {1920, 1280, 390, 360}) {
                dark.size(width, 900);
                assertThat(dark.widerThanThePage()).as(width + " px").isEmpty();
                dark.picture("claim-" + page + "-" + width);
            }
            assertThat(dark.complaints()).isEmpty();
        }
    }

    @Test
    void fitsOnPaper() {
        for (String page : List.of("plan", "judge")) {
            browser.driver().get(folder.resolve(page + ".html").toUri().toString());
            browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
            browser.size(PAPER, 970);
            assertThat((Long) browser.script("return document.documentElement.scrollWidth"))
                    .as(page)
                    .isLessThanOrEqualTo((long) PAPER);
        }
    }
}
