package org.shutoffbench.harness.study.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.harness.study.tuning.SettingsSearch.Candidate;

class SettingsSearchTest {

    private static final Setting ANGLE = new Setting("angle", "deg", 0, 90, 60, "invented", Setting.Role.TUNED);
    private static final Setting SHARE = new Setting("share", "1", 0, 1, 0.5, "invented", Setting.Role.TUNED);
    private static final Setting COUNT = new Setting("count", "1", 0, 400, 10, "invented", Setting.Role.TUNED);

    /** 100 joints, of which fewer are in the window the farther a setting is from its best value. */
    private static Score score(double distance) {
        return new Score(100, Math.max(0, 100 - Math.round(100 * distance)), 100 * distance * distance, 0, 0, 0);
    }

    private static Score byAngle(Map<String, Double> settings) {
        return score(Math.abs(settings.get("angle") - 37.2) / 90);
    }

    @Test
    void oneSettingIsFoundAsByAFullScan() throws InterruptedException {
        SettingsSearch search = new SettingsSearch(
                List.of(ANGLE),
                Map.of(),
                batch -> batch.stream().map(SettingsSearchTest::byAngle).toList());
        double scanned = 0;
        for (double angle = 0; angle <= 90; angle += 0.01) {
            scanned = byAngle(Map.of("angle", angle)).loss()
                            < byAngle(Map.of("angle", scanned)).loss()
                    ? angle
                    : scanned;
        }
        Candidate best = search.leastLoss(100);
        assertThat(best.settings().get("angle")).isCloseTo(scanned, org.assertj.core.api.Assertions.within(0.2));
    }

    @Test
    void twoSettingsAreFoundTogether() throws InterruptedException {
        SettingsSearch search = new SettingsSearch(
                List.of(ANGLE, SHARE),
                Map.of(),
                batch -> batch.stream()
                        .map(s -> score(Math.hypot((s.get("angle") - 20) / 90, s.get("share") - 0.7)))
                        .toList());
        Candidate best = search.leastLoss(100);
        assertThat(best.score().inWindow()).isGreaterThanOrEqualTo(97);
    }

    @Test
    void theBudgetIsSpentToTheLastEvaluationAndTheDefaultIsTriedFirst() throws InterruptedException {
        SettingsSearch search = new SettingsSearch(
                List.of(ANGLE),
                Map.of("other", 3.0),
                batch -> batch.stream().map(SettingsSearchTest::byAngle).toList());
        search.leastLoss(100);
        assertThat(search.log()).hasSize(100);
        assertThat(search.log().get(0).settings()).containsEntry("angle", 60.0).containsEntry("other", 3.0);
    }

    @Test
    void countsAreWholeNumbersAndAnglesHaveFewDigits() throws InterruptedException {
        SettingsSearch search = new SettingsSearch(
                List.of(COUNT, ANGLE),
                Map.of(),
                batch -> batch.stream()
                        .map(s -> score(Math.abs(s.get("count") - 7) / 400))
                        .toList());
        search.leastLoss(100);
        assertThat(search.log()).allSatisfy(candidate -> {
            assertThat(candidate.settings().get("count") % 1).isZero();
            assertThat(Double.toString(candidate.settings().get("angle")).length())
                    .isLessThanOrEqualTo(6);
        });
    }

    @Test
    void moreJointsInTheWindowBeatLessScatterAndLessScatterBreaksTies() {
        assertThat(new Score(100, 51, 90, 0, 0, 0).loss()).isLessThan(new Score(100, 50, 1, 0, 0, 0).loss());
        assertThat(new Score(100, 50, 1, 0, 0, 0).loss()).isLessThan(new Score(100, 50, 2, 0, 0, 0).loss());
    }

    @Test
    void verdictSettingsMissAsLittleAsTheyCanWhileStillSayingReached() throws InterruptedException {
        // the stricter the doubt allowed, the fewer misses and the fewer claims
        SettingsSearch search = new SettingsSearch(
                List.of(SHARE),
                Map.of(),
                batch -> batch.stream()
                        .map(s -> new Score(
                                1000,
                                900,
                                1,
                                Math.round(900 * Math.min(1, 0.5 + s.get("share"))),
                                Math.round(90 * s.get("share")),
                                0))
                        .toList());
        Candidate best = search.fewestSilentMisses(100, 0.985);
        assertThat(best.score().reachedInWindow()).isGreaterThanOrEqualTo(887);
        assertThat(best.settings().get("share")).isBetween(0.485, 0.5);
    }

    @Test
    void whereNothingSaysReachedOftenEnoughTheMostOutspokenWins() throws InterruptedException {
        SettingsSearch search = new SettingsSearch(
                List.of(SHARE),
                Map.of(),
                batch -> batch.stream()
                        .map(s -> new Score(1000, 900, 1, Math.round(500 * s.get("share")), 0, 0))
                        .toList());
        assertThat(search.fewestSilentMisses(50, 0.985).settings()).containsEntry("share", 1.0);
    }
}
