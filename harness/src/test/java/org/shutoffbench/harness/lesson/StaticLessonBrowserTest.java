package org.shutoffbench.harness.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shutoffbench.harness.browser.Browser;

/** The lesson from disk: the same steps, the same numbers, no server. */
class StaticLessonBrowserTest {

    @Test
    void runsFromDiskToTheLockNutWithThePlantsNumbers(@TempDir Path folder) throws Exception {
        Path page = folder.resolve("lesson.html");
        StaticLesson.write(page);
        assertThat(page.toFile().length()).isLessThan(3_000_000);
        try (Browser browser = Browser.open(1280, 860)) {
            browser.driver().get(page.toUri().toString());
            assertThat(browser.text(".source")).contains("computed beforehand");
            browser.all("#told button.small").get(1).click();
            browser.find("#next").click();
            strikeTo(browser, 7);
            browser.find("#set").click();
            browser.find("#next").click();
            browser.until("document.querySelector('#p-repeats svg')");
            browser.find("#next").click();
            strikeTo(browser, 7);
            browser.until("document.getElementById('r-says').textContent === 'done'");
            BlowFrame end = new LiveTightening(Knobs.LOCK_NUT, 7).strikeTo(7).last();
            assertThat(browser.text("#r-force")).isEqualTo("0");
            assertThat(browser.text("#r-gap")).isEqualTo(String.format(Locale.ROOT, "%.2f", -end.pastSnugDeg() / 360));
            browser.find("#next").click();
            browser.find("#next").click();
            browser.until("document.getElementById('race')");
            browser.find("#race").click();
            browser.until("document.querySelector('#other table.rows').textContent.includes('silent miss')");
            assertThat(browser.complaints()).isEmpty();
            assertThat(browser.requests()).containsExactly(page.toUri().toString());
        }
    }

    private static void strikeTo(Browser browser, int blows) {
        browser.until("!document.getElementById('blow').disabled");
        for (int blow = 1; blow <= blows; blow++) {
            browser.find("#blow").click();
            browser.until("document.getElementById('r-blows').textContent === '" + blow + "'");
        }
    }
}
