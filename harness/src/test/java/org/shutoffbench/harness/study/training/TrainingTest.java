package org.shutoffbench.harness.study.training;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.run.Benches;
import org.shutoffbench.harness.run.StrategyCatalogue;
import org.shutoffbench.harness.scenario.Scenario;
import org.shutoffbench.harness.study.tuning.Tuning;

class TrainingTest {

    private static final int JOINTS = 40;
    private static final Scenario SCENARIO = Benches.scattered().scenario();

    private static List<Blow> training;
    private static List<Blow> validation;

    private static Training training(int threads) {
        return new Training(SCENARIO, new StrategyCatalogue(), JOINTS, threads);
    }

    @BeforeAll
    static void tighten() throws InterruptedException {
        training = training(2).blows(Training.TRAINING_SEED_OFFSET);
        validation = training(2).blows(Training.VALIDATION_SEED_OFFSET);
    }

    @Test
    void trainingTwiceGivesEqualBytesForAnyNumberOfThreads() throws InterruptedException {
        TrainedModel one = training(1).train();
        TrainedModel two = training(2).train();
        assertThat(two.json()).isEqualTo(one.json());
        assertThat(two.header()).isEqualTo(one.header());
    }

    @Test
    void whatWasLearnedHoldsOnJointsThatWereNotSeen() {
        RidgeFit fit = RidgeFit.of(training, 1e-3);
        double balanceAlone = Math.sqrt(validation.stream()
                .mapToDouble(b -> (b.balanceNm() - b.middleNm()) * (b.balanceNm() - b.middleNm()))
                .average()
                .orElseThrow());
        assertThat(fit.explained(validation)).isGreaterThan(0.95);
        assertThat(fit.errorNm(validation)).isLessThan(0.8 * balanceAlone);
    }

    /** A fit that finds structure where there is none has seen the truth through a back door. */
    @Test
    void withShuffledLabelsItFallsToChance() {
        List<Double> labels =
                new ArrayList<>(training.stream().map(Blow::middleNm).toList());
        Collections.shuffle(labels, new Random(5));
        List<Blow> shuffled = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            shuffled.add(training.get(i).labelled(labels.get(i)));
        }
        // Chance explains nothing; 55 coefficients fitted to noise on about a thousand blows cost some hundredths.
        assertThat(RidgeFit.of(shuffled, 1e-3).explained(validation)).isBetween(-0.3, 0.1);
    }

    @Test
    void trainingValidationTuningAndTheJudgedJointsShareNoSeed() throws InterruptedException {
        TrainedModel model = training(2).train();
        assertThat(model.made())
                .containsEntry("training seed", Long.toString(SCENARIO.seed() + Training.TRAINING_SEED_OFFSET))
                .containsEntry("validation seed", Long.toString(SCENARIO.seed() + Training.VALIDATION_SEED_OFFSET));
        assertThat(List.of(
                        0L,
                        Training.TRAINING_SEED_OFFSET,
                        Training.VALIDATION_SEED_OFFSET,
                        Tuning.TUNING_SEED_OFFSET,
                        Tuning.VALIDATION_SEED_OFFSET))
                .doesNotHaveDuplicates();
    }

    @Test
    void theCoefficientsFitInFourKilobytes() {
        assertThat(TrainedModel.bytes()).isEqualTo(4 * (9 + 9 + 55)).isLessThanOrEqualTo(4096);
    }

    @Test
    void theHeaderItselfIsAtMostFourKilobytes() throws InterruptedException, IOException {
        assertThat(training(2).train().header().getBytes(StandardCharsets.UTF_8))
                .hasSizeLessThanOrEqualTo(4096);
        assertThat(Files.size(Path.of("../docs/examples/harbour-walkway-trained.h")))
                .isLessThanOrEqualTo(4096);
    }
}
