package org.shutoffbench.harness.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.shutoffbench.harness.browser.Browser;
import org.shutoffbench.harness.record.TextFile;
import org.shutoffbench.harness.study.CellSummary;

/** The report from disk in a real browser, network off. */
class ReportBrowserTest {

    private static final InventedStudy STUDY = new InventedStudy(500);

    @TempDir
    private static Path folder;

    private static Path page;
    private Browser browser;

    @BeforeAll
    static void write() throws Exception {
        page = folder.resolve("report.html");
        TextFile.write(page, HtmlReport.html(STUDY.summary, InventedStudy.facts(), STUDY.worst()));
        assertThat(Files.size(page)).isPositive();
    }

    private void open(int width, String... arguments) {
        browser = Browser.open(width, 900, arguments);
        browser.driver().get(page.toUri().toString());
        browser.until("document.querySelectorAll('.chart').length > 0");
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @Test
    void loadsWithoutComplaintOrRequestAndDrawsEveryChart() {
        open(1280);
        browser.until("document.querySelectorAll('.chart:not([data-drawn])').length === 0");
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.requests()).containsExactly(page.toUri().toString());
        List<WebElement> charts = browser.all(".chart");
        assertThat(charts).hasSize(4 + 4 + 3 + 2);
        for (WebElement chart : charts) {
            assertThat(browser.ink(chart))
                    .as(chart.getDomAttribute("data-title"))
                    .isGreaterThan(0.01);
        }
        browser.picture("report-1280");
    }

    @Test
    void everyPictureHasANameAndItsValues() {
        open(1280);
        for (WebElement svg : browser.all(".chart svg")) {
            assertThat(svg.getDomAttribute("role")).isEqualTo("img");
            assertThat(browser.text("#" + svg.getDomAttribute("aria-labelledby")))
                    .isNotBlank();
            assertThat((String) browser.script(
                            "return document.getElementById(arguments[0]).textContent",
                            svg.getDomAttribute("aria-describedby")))
                    .hasSizeGreaterThan(40);
        }
    }

    @Test
    void switchesQuantityAndSettingsByKeyboard() {
        open(1280);
        String before = (String) browser.script("return document.querySelector('.chart[data-kind=ecdf]').innerHTML");
        WebElement torque = browser.find("input[name=quantity]:checked");
        torque.sendKeys(Keys.ARROW_RIGHT);
        assertThat(browser.find("input[name=quantity]:checked").getDomAttribute("value"))
                .isEqualTo("1");
        String force = (String) browser.script("return document.querySelector('.chart[data-kind=ecdf]').innerHTML");
        assertThat(force).isNotEqualTo(before).contains("kN");
        browser.find("input[name=settings]:checked").sendKeys(Keys.ARROW_RIGHT);
        assertThat(browser.find("input[name=settings]:checked").getDomAttribute("value"))
                .isEqualTo("home");
        assertThat((String) browser.script("return document.querySelector('.chart[data-kind=ecdf]').innerHTML"))
                .isNotEqualTo(force);
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void theTableOfRatesIsTheSummaryToThePrintedDigits() {
        open(1280);
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
        @SuppressWarnings("unchecked")
        List<List<String>> rows = (List<List<String>>) browser.script("""
                return Array.from(document.querySelector('details table').querySelectorAll('tbody tr'),
                    row => Array.from(row.children, cell => cell.textContent))
                """);
        Names names = new Names(STUDY.summary);
        for (CellSummary cell : STUDY.summary.cells()) {
            String head = names.family(cell.family()) + ", " + names.strategy(cell.strategy());
            List<String> row =
                    rows.stream().filter(r -> r.get(0).equals(head)).findFirst().orElseThrow();
            assertThat(row.get(1)).isEqualTo(cell.run() + " of " + cell.planned());
            if (cell.rates() != null) {
                assertThat(row.get(2)).startsWith(Printed.percent(cell.rates().inWindow()) + " (");
                assertThat(row.get(3)).startsWith(Printed.percent(cell.rates().silentMiss()) + " (");
                assertThat(row.get(4)).startsWith(Printed.percent(cell.rates().falseStop()) + " (");
            }
        }
    }

    @Test
    void hasNoSeriousAccessibilityViolationInLightAndDark() {
        open(1280);
        browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
        assertThat(browser.violations()).isEmpty();
        browser.dark();
        assertThat(browser.violations()).isEmpty();
        browser.script("document.querySelectorAll('details').forEach(d => d.open = false)");
        browser.picture("report-dark");
    }

    @Test
    void needsNoSidewaysScrollingFrom360To1920() {
        open(1920);
        for (int width : new int[] {1920, 1280, 768, 390, 360}) {
            browser.size(width, 900);
            browser.until("document.querySelector('.chart svg').clientWidth <= innerWidth");
            assertThat(browser.widerThanThePage()).as(width + " px").isEmpty();
            browser.picture("report-" + width);
        }
    }

    @Test
    void printsWithTablesOpenAndControlsHidden() {
        open(1280);
        browser.script("window.dispatchEvent(new Event('beforeprint'))");
        assertThat((Boolean)
                        browser.script("return Array.from(document.querySelectorAll('details')).every(d => d.open)"))
                .isTrue();
        browser.script("window.dispatchEvent(new Event('afterprint'))");
        assertThat((Boolean)
                        browser.script("return Array.from(document.querySelectorAll('details')).some(d => d.open)"))
                .isFalse();
        browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        assertThat(browser.find(".switches").isDisplayed()).isFalse();
        assertThat(browser.find(".matrix").isDisplayed()).isTrue();
    }

    /** A4 landscape less its margins is 1032 px wide. */
    @Test
    void fitsOnPaperWithEveryPictureWhole() {
        open(1280);
        browser.script("window.dispatchEvent(new Event('beforeprint'))");
        browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        browser.size(1032, 700);
        assertThat(browser.script("""
                return Array.from(document.querySelectorAll('table.matrix, table.plain, .chart svg, .stops, dl'))
                    .filter(e => e.getBoundingClientRect().right > 1033 || e.getBoundingClientRect().height < 5)
                    .map(e => e.outerHTML.slice(0, 120))
                """)).isEqualTo(List.of());
        assertThat(browser.script("""
                return Array.from(document.querySelectorAll('.chart svg')).every(svg =>
                    svg.getBoundingClientRect().right <= svg.closest('figure').getBoundingClientRect().right + 1 &&
                    svg.getBoundingClientRect().bottom <= svg.closest('figure').getBoundingClientRect().bottom + 1)
                """)).isEqualTo(true);
    }
}
