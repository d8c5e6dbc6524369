package org.shutoffbench.harness.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.WebElement;
import org.shutoffbench.harness.browser.Browser;

/** The report of a scenario with an audit: what the tool left low, and what is still low after the audit. */
class VisitsPageTest {

    @TempDir
    static Path folder;

    private static Path page;
    private static String html;

    @BeforeAll
    static void runAnExample() throws IOException {
        CommandLineHarness command = new CommandLineHarness();
        Path run = folder.resolve("run");
        assertThat(command.run(
                        "run",
                        Path.of("..", "docs", "examples", "visits", "not-yet.yaml"),
                        "--joints",
                        60,
                        "--out",
                        run))
                .as(command.err())
                .isZero();
        page = run.resolve("report.html");
        html = Files.readString(page);
    }

    @Test
    void thePageAsksWhetherOneVisitIsEnoughAndDefinesItsSymbols() {
        assertThat(html)
                .contains("One visit or two", "Can the audit be left out?", "c_a  one audit", "blow count")
                .containsPattern("An audit would (still leave|find)");
    }

    @Test
    void theNumbersAreThoseOfTheVisitsCommand() throws IOException {
        CommandLineHarness command = new CommandLineHarness();
        assertThat(command.run("visits", page.getParent(), "--strategy", "blow count (home)"))
                .as(command.err())
                .isZero();
        String answer = command.out()
                .lines()
                .filter(line -> line.startsWith("Can the audit be left out?"))
                .findFirst()
                .orElseThrow()
                .replace("Can the audit be left out? ", "");
        assertThat(html).contains(answer);
    }

    @Test
    void aScenarioWithoutAnAuditHasNoSuchSection() throws IOException {
        CommandLineHarness command = new CommandLineHarness();
        Path run = folder.resolve("plain");
        assertThat(command.run("run", CommandLineHarness.scenarioIn(folder), "--out", run))
                .as(command.err())
                .isZero();
        assertThat(Files.readString(run.resolve("report.html"))).doesNotContain("One visit or two");
    }

    @Test
    void theSectionCanBeReadByEyeAndEarOnAnyWidth() {
        try (Browser browser = Browser.open(1280, 900)) {
            browser.driver().get(page.toUri().toString());
            browser.until("document.querySelectorAll('.chart:not([data-drawn])').length === 0");
            WebElement rows = browser.find(".visits tbody");
            assertThat(rows.getText()).contains("\u2192");
            assertThat(browser.all(".track .tool")).hasSameSizeAs(browser.all(".visits tbody tr"));
            browser.script("document.querySelector('section[aria-labelledby=visits] details').open = true");
            assertThat(browser.violations()).isEmpty();
            browser.dark();
            assertThat(browser.violations()).isEmpty();
            browser.script("document.querySelector('#visits').scrollIntoView()");
            for (int width : new int[] {1280, 390, 360}) {
                browser.size(width, 900);
                assertThat(browser.widerThanThePage()).as(width + " px").isEmpty();
                browser.picture("visits-" + width);
            }
            assertThat(browser.complaints()).isEmpty();
        }
    }
}
