package org.shutoffbench.harness.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.browser.Browser;

/** The lesson in a real browser, driven to its end. */
class LessonBrowserTest {

    private Browser browser;
    private LessonServer server;

    @BeforeEach
    void open() throws Exception {
        browser = Browser.open(1280, 860);
        server = LessonServer.start();
        browser.driver().get(server.address().toString());
        browser.until("document.getElementById('step-title').textContent === 'Predict'");
    }

    @AfterEach
    void close() {
        if (browser != null) {
            browser.close();
        }
        if (server != null) {
            server.close();
        }
    }

    private void next() {
        browser.until("!document.getElementById('next').disabled");
        browser.find("#next").click();
    }

    private void strikeTo(int blows) {
        browser.until("!document.getElementById('blow').disabled");
        for (int blow = 1; blow <= blows; blow++) {
            browser.find("#blow").click();
            browser.until("document.getElementById('r-blows').textContent === '" + blow + "'");
        }
    }

    private static String kn(double value) {
        return value == 0 ? "0" : String.format(Locale.ROOT, "%.1f", value);
    }

    @Test
    void sixStepsShowTheEnginesNumbers() {
        assertThat(browser.find("#next").isEnabled())
                .as("nobody has predicted yet")
                .isFalse();
        browser.picture("lesson-1");
        browser.all("#told button.small").get(1).click();
        next();
        strikeTo(7);
        browser.picture("lesson-2");
        assertThat(browser.text("#r-force"))
                .isEqualTo(kn(new LiveTightening(Knobs.BENCH_JOINT, 0)
                        .strikeTo(7)
                        .last()
                        .clampForceKn()));
        browser.find("#set").click();
        next();
        browser.until("document.querySelector('#p-repeats svg')");
        browser.picture("lesson-3");
        long good = LessonBench.ofTheLesson().repeat(7).stream()
                .filter(LessonBench.Repeat::inWindow)
                .count();
        assertThat(browser.text("#told .finding b")).isEqualTo(good + " of 30 in the window");
        next();
        strikeTo(7);
        browser.until("document.getElementById('r-says').textContent === 'done'");
        BlowFrame onLockNut = new LiveTightening(Knobs.LOCK_NUT, 7).strikeTo(7).last();
        assertThat(browser.text("#r-force")).isEqualTo(kn(onLockNut.clampForceKn()));
        assertThat(browser.text("#r-gap"))
                .isEqualTo(String.format(Locale.ROOT, "%.2f", -onLockNut.pastSnugDeg() / 360));
        assertThat(browser.find("#blow").isEnabled()).isFalse();
        assertThat(browser.ink(browser.find("#p-torque"))).isGreaterThan(0.01);
        assertThat(browser.ink(browser.find("#p-force"))).isGreaterThan(0.01);
        browser.picture("lesson-4");
        next();
        browser.until("document.getElementById('r-blows').textContent === '7'");
        int blows = 7;
        while (!browser.find("#set-lock").isEnabled() && blows < 40) {
            blows++;
            browser.find("#blow").click();
            browser.until("document.getElementById('r-blows').textContent === '" + blows + "'");
        }
        browser.picture("lesson-5");
        browser.find("#set-lock").click();
        browser.until("document.querySelector('#told .finding')");
        assertThat(browser.text("#told .finding b"))
                .isEqualTo("Now the bench joint goes high: "
                        + kn(new LiveTightening(Knobs.BENCH_JOINT, blows)
                                .strikeTo(blows)
                                .last()
                                .clampForceKn())
                        + " kN.");
        next();
        browser.until("document.getElementById('race')");
        browser.find("#race").click();
        browser.until("document.querySelector('#other .kicker').parentNode.textContent.includes('500 of 500')");
        browser.picture("lesson-6");
        LessonBench.Progress[] last = new LessonBench.Progress[1];
        LessonBench.ofTheLesson().race(2, 7, () -> true, progress -> last[0] = progress);
        for (LessonBench.Standing standing : last[0].standings()) {
            assertThat(browser.text("#other table.rows"))
                    .contains(standing.inWindow() + " in window, " + standing.silentMiss() + " silent misses");
        }
        assertThat(browser.find("#worksheet").isDisplayed()).isTrue();
        assertThat(browser.complaints()).isEmpty();
    }
}
