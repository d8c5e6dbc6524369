package org.shutoffbench.harness.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shutoffbench.harness.study.StudySummary;
import org.shutoffbench.harness.study.failure.FindingFile;
import org.shutoffbench.harness.study.failure.SensitivityStudy;
import org.shutoffbench.harness.study.failure.WeakestStudy;
import tools.jackson.databind.json.JsonMapper;

/**
 * What other commands found on the same scenario and left in the run's folder.
 *
 * @param sensitivity where the scatter comes from; null where nobody asked
 * @param weakest the joint nearest to the ordinary that fails; null where nobody asked
 */
record Findings(SensitivityStudy.@Nullable Result sensitivity, WeakestStudy.@Nullable Result weakest) {

    private static final double LEAST_SHARE = 0.005;

    static final Findings NONE = new Findings(null, null);

    private static final JsonMapper JSON = JsonMapper.builder().build();

    /**
     * Reads the findings in a folder; those of another scenario are left alone.
     *
     * @throws IOException if a file is there and cannot be read
     */
    static Findings read(Path folder, StudySummary summary) throws IOException {
        SensitivityStudy.Result sensitivity =
                read(folder.resolve(FindingFile.SENSITIVITY), SensitivityStudy.Result.class);
        WeakestStudy.Result weakest = read(folder.resolve(FindingFile.WEAKEST), WeakestStudy.Result.class);
        String scenario = summary.scenario();
        return new Findings(
                sensitivity != null && sensitivity.scenario().equals(scenario) ? sensitivity : null,
                weakest != null && weakest.scenario().equals(scenario) ? weakest : null);
    }

    private static <T> @Nullable T read(Path file, Class<T> type) throws IOException {
        return Files.isRegularFile(file) ? JSON.readValue(Files.readString(file), type) : null;
    }

    boolean present() {
        return sensitivity != null || weakest != null;
    }

    private record View(
            String heading,
            @Nullable SensitivityView sensitivity,
            @Nullable WeakestView weakest) {}

    private record SensitivityView(
            String of,
            String confidence,
            List<Row> rows,
            @Nullable String rest) {}

    private record Row(String name, MatrixView.Bar total, String alone) {}

    private record WeakestView(
            String title,
            String words,
            List<String> changes,
            @Nullable String noise) {}

    String html(Templates templates) {
        return templates.fill("findings", new View(heading(), sensitivityView(), weakestView()));
    }

    private String heading() {
        if (sensitivity != null && !sensitivity.shares().isEmpty()) {
            SensitivityStudy.Share first = sensitivity.shares().get(0);
            String part = first.totalInterval().low() > 0.5
                    ? " makes most of the scatter of "
                    : " is the largest source of scatter of ";
            return Printed.capital(first.name()) + part + sensitivity.of() + " with " + sensitivity.strategy() + " on "
                    + sensitivity.family();
        }
        return "The nearest joint that fails";
    }

    private @Nullable SensitivityView sensitivityView() {
        if (sensitivity == null) {
            return null;
        }
        return new SensitivityView(
                sensitivity.of() + ", " + sensitivity.strategy() + " on " + sensitivity.family(),
                Printed.level(sensitivity.confidence()),
                sensitivity.shares().stream()
                        .filter(Findings::counts)
                        .map(Findings::row)
                        .toList(),
                rest(sensitivity));
    }

    /** Whether a source makes more of the scatter than a page should leave out. */
    private static boolean counts(SensitivityStudy.Share share) {
        return share.totalInterval().high() >= LEAST_SHARE;
    }

    private static @Nullable String rest(SensitivityStudy.Result result) {
        long left = result.shares().stream().filter(share -> !counts(share)).count();
        return left == 0
                ? null
                : left + " more sources, each surely below " + Printed.percent(LEAST_SHARE)
                        + " %, stand in sensitivity.json.";
    }

    private static Row row(SensitivityStudy.Share share) {
        double low = bounded(share.totalInterval().low());
        double high = bounded(share.totalInterval().high());
        double total = bounded(share.total());
        String interval = Printed.fixed(100 * low, 1) + "\u2013" + Printed.fixed(100 * high, 1);
        return new Row(
                share.name(),
                new MatrixView.Bar(
                        Printed.fixed(100 * total, 1),
                        interval,
                        Printed.fixed(100 * total, 1) + " %, interval " + interval + " %",
                        total <= 0,
                        String.format(
                                Locale.ROOT,
                                "--value:%.3f%%;--low:%.3f%%;--high:%.3f%%",
                                100 * total,
                                100 * low,
                                100 * high)),
                Printed.fixed(100 * share.first(), 1) + " % alone ("
                        + Printed.fixed(100 * share.firstInterval().low(), 1) + " to "
                        + Printed.fixed(100 * share.firstInterval().high(), 1) + ")");
    }

    private static double bounded(double share) {
        return Math.max(0, Math.min(1, share));
    }

    private @Nullable WeakestView weakestView() {
        if (weakest == null) {
            return null;
        }
        List<String> changes = weakest.changes().stream()
                .map(change -> change.source() + " " + Printed.signed(change.sigma(), 1) + " sigma")
                .toList();
        var over = weakest.failsOverNoiseInterval();
        String noise = over == null
                ? null
                : "With other noise it fails in " + Printed.percent(weakest.failsOverNoise()) + " % of runs ("
                        + Printed.percent(over.low()) + " to " + Printed.percent(over.high()) + "); none of "
                        + weakest.probes() + " random joints nearer to the ordinary fails.";
        return new WeakestView(
                weakest.event() + ", " + weakest.strategy() + " on " + weakest.family(),
                weakest.words(),
                changes,
                noise);
    }
}
