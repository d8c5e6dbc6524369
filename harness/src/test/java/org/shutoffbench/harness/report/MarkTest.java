package org.shutoffbench.harness.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class MarkTest {

    @Test
    void twentyStrategiesUnderTwoTablesCanBeToldApartWithoutColour() {
        Set<String> seen = new HashSet<>();
        for (int strategy = 0; strategy < 20; strategy++) {
            for (int variant = 0; variant < 2; variant++) {
                Mark mark = Mark.of(strategy, variant);
                assertThat(seen.add(mark.path() + mark.hollow() + mark.dash())).isTrue();
            }
        }
    }

    @Test
    void theFirstEightHuesDiffer() {
        Set<Integer> hues = new HashSet<>();
        for (int strategy = 0; strategy < Mark.HUES; strategy++) {
            hues.add(Mark.of(strategy, 0).hue());
        }
        assertThat(hues).hasSize(Mark.HUES);
    }

    /** WCAG 2.2, success criteria 1.4.3 and 1.4.11: text 4.5:1, graphical objects 3:1. */
    @Test
    void hueAndInkStandOutFromTheGroundInLightAndDark() throws Exception {
        String css =
                new String(HtmlReport.class.getResourceAsStream("palette.css").readAllBytes(), StandardCharsets.UTF_8);
        int dark = css.indexOf("@media screen");
        int print = css.indexOf("@media print");
        for (String scheme : new String[] {css.substring(0, dark), css.substring(dark, print)}) {
            double ground = luminance(scheme, "--ground");
            double band = luminance(scheme, "--band");
            for (int hue = 0; hue < Mark.HUES; hue++) {
                assertThat(contrast(luminance(scheme, "--hue-" + hue), ground)).isGreaterThanOrEqualTo(3);
                assertThat(contrast(luminance(scheme, "--hue-" + hue), band)).isGreaterThanOrEqualTo(3);
            }
            for (String ink : new String[] {"--ink", "--ink-2"}) {
                assertThat(contrast(luminance(scheme, ink), ground)).isGreaterThanOrEqualTo(4.5);
                assertThat(contrast(luminance(scheme, ink), band)).isGreaterThanOrEqualTo(4.5);
            }
        }
    }

    private static double contrast(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    /** Relative luminance of a custom property by WCAG 2.2. */
    private static double luminance(String css, String property) {
        Matcher found =
                Pattern.compile(Pattern.quote(property) + ":\\s*#([0-9a-f]{6})").matcher(css);
        assertThat(found.find()).as(property).isTrue();
        int rgb = Integer.parseInt(found.group(1), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
