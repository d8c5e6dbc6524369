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
                    .contains(standing.inWindow() + " in window, " + standing.silentMiss()
                            + (standing.silentMiss() == 1 ? " silent miss," : " silent misses,"));
        }
        assertThat(browser.find("#worksheet").isDisplayed()).isTrue();
        assertThat(browser.complaints()).isEmpty();
    }

    private void toStepFive() {
        browser.all("#told button.small").get(5).click();
        next();
        strikeTo(7);
        browser.find("#set").click();
        next();
        next();
        strikeTo(7);
        next();
        browser.until("document.getElementById('r-blows').textContent === '7'");
    }

    @Test
    void aSliderStrikesTheJointAgainToTheSameBlow() {
        toStepFive();
        browser.script("""
                const slider = document.getElementById('slider-prevailingNm');
                slider.value = 0;
                window.begun = performance.now();
                new MutationObserver(() => window.took = window.took || performance.now() - window.begun)
                    .observe(document.getElementById('r-force'), {childList: true, characterData: true, subtree: true});
                slider.dispatchEvent(new Event('input'));
                """);
        browser.until("window.took");
        assertThat(browser.text("#r-force"))
                .isEqualTo(kn(new LiveTightening(new Knobs(0, 300, 0.13, 1), 0)
                        .strikeTo(7)
                        .last()
                        .clampForceKn()));
        assertThat(browser.text("#r-blows")).isEqualTo("7");
        System.Logger log = System.getLogger(LessonBrowserTest.class.getName());
        log.log(System.Logger.Level.INFO, "slider to picture: {0} ms", browser.script("return window.took"));
    }

    @Test
    void playsByItselfAndPauses() {
        toStepFive();
        browser.find("#play").click();
        browser.until("Number(document.getElementById('r-blows').textContent) >= 9");
        assertThat(browser.text("#play")).isEqualTo("Pause");
        browser.find("#play").click();
        browser.until("document.getElementById('play').textContent === 'Play'");
        assertThat((String) browser.script("return document.getElementById('live').textContent"))
                .startsWith("Blow ");
    }

    @Test
    void aSecondPageHasABenchOfItsOwnAndAClosedOneStops() {
        toStepFive();
        try (Browser second = Browser.open(1000, 800)) {
            second.driver().get(server.address().toString());
            second.until("document.getElementById('step-title').textContent === 'Predict'");
            browser.until("document.getElementById('r-blows').textContent === '7'");
            org.assertj.core.api.Assertions.assertThat(server.pages()).isEqualTo(2);
        }
        browser.find("#play").click();
        browser.until("document.getElementById('play').textContent === 'Pause'");
        browser.driver().get("about:blank");
        long late = System.nanoTime() + 8_000_000_000L;
        while (server.pages() > 0 || server.busyPages() > 0) {
            assertThat(System.nanoTime()).as("the simulation still runs").isLessThan(late);
            Thread.onSpinWait();
        }
    }

    @Test
    void saysSoWhenTheServerIsGone() {
        toStepFive();
        server.close();
        browser.until("!document.getElementById('gone').hidden");
        assertThat(browser.text("#gone")).contains("stopped answering at blow 7");
        assertThat(browser.find("#play").isEnabled()).isFalse();
        assertThat(browser.find("#slider-friction").isEnabled()).isFalse();
    }

    @Test
    void hasNoSeriousAccessibilityViolationAndFitsFrom360To1920() {
        assertThat(browser.violations()).isEmpty();
        toStepFive();
        assertThat(browser.violations()).isEmpty();
        browser.dark();
        assertThat(browser.violations()).isEmpty();
        for (int width : new int[] {1920, 1280, 768, 390, 360}) {
            browser.size(width, 900);
            browser.until("document.querySelector('#p-torque svg').clientWidth <= innerWidth");
            assertThat(browser.widerThanThePage()).as(width + " px").isEmpty();
            browser.picture("lesson-dark-" + width);
        }
        next();
        browser.until("document.getElementById('race')");
        assertThat(browser.violations()).isEmpty();
        browser.picture("lesson-race-360");
    }
}
