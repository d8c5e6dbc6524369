package org.shutoffbench.harness.lesson;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.report.Caution;
import org.shutoffbench.harness.report.HtmlReport;
import org.shutoffbench.harness.report.Templates;

/** The lesson's page: the same for the live bench and for the version from disk, but for where its numbers come from. */
final class LessonPage {

    private static final Templates TEMPLATES = new Templates(LessonPage.class);
    private static final Templates REPORT = new Templates(HtmlReport.class);

    private LessonPage() {}

    /**
     * What the page's script starts from.
     *
     * @param token for the live bench; null from disk
     * @param tables joints computed beforehand; null for the live bench
     */
    record Setup(
            @Nullable String token,
            List<Knobs.Slider> sliders,
            Knobs bench,
            Knobs lockNut,
            List<String> families,
            List<String> strategies,
            int repeats,
            int raceJoints,
            StaticLesson.@Nullable Tables tables) {}

    private record Page(String styles, String caution, boolean fromDisk, String setup, String library, String script) {}

    static String live(LessonBench bench, String token) {
        return page(bench, token, null);
    }

    static String fromDisk(LessonBench bench, StaticLesson.Tables tables) {
        return page(bench, null, tables);
    }

    private static String page(LessonBench bench, @Nullable String token, StaticLesson.@Nullable Tables tables) {
        Setup setup = new Setup(
                token,
                Knobs.SLIDERS,
                Knobs.BENCH_JOINT,
                Knobs.LOCK_NUT,
                bench.families(),
                bench.strategies(),
                LessonBench.REPEATS,
                LessonBench.RACE_JOINTS,
                tables);
        return TEMPLATES.fill(
                "lesson",
                new Page(
                        REPORT.text("palette.css") + TEMPLATES.text("lesson.css"),
                        Caution.TEXT,
                        tables != null,
                        Templates.json(setup),
                        Templates.chartLibrary(),
                        REPORT.text("chart-tools.js")
                                + TEMPLATES.text("engine.js")
                                + TEMPLATES.text("pictures.js")
                                + TEMPLATES.text("lesson.js")));
    }
}
