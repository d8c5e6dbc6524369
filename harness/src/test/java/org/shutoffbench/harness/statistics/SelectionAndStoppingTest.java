package org.shutoffbench.harness.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SelectionAndStoppingTest {

    /** Kim and Nelson's guarantee: the best survives with probability at least 1 - alpha where it leads by the indifference. */
    @Test
    void theBestSurvives() {
        int runs = 400;
        int right = 0;
        for (int run = 0; run < runs; run++) {
            SplittableRandom random = new SplittableRandom(run);
            Gaussians gaussians = new Gaussians(random);
            KimNelson selection = new KimNelson(4, 10, 0.05, 0.5, 0);
            int observed = 0;
            while (selection.survivors().size() > 1 && observed < 5000) {
                double common = gaussians.next();
                selection.observe(new double[] {
                    common + gaussians.next(),
                    common + gaussians.next(),
                    common + 0.5 + gaussians.next(),
                    common + gaussians.next()
                });
                observed++;
            }
            right += selection.survivors().equals(java.util.List.of(2)) ? 1 : 0;
        }
        // 95 % of 400 less three standard errors.
        assertThat(right).isGreaterThanOrEqualTo(367);
    }

    @Test
    void nobodyIsEliminatedInTheFirstStage() {
        KimNelson selection = new KimNelson(2, 5, 0.05, 0.1, 0);
        for (int i = 0; i < 4; i++) {
            selection.observe(new double[] {0, 100});
            assertThat(selection.survivors()).hasSize(2);
        }
        selection.observe(new double[] {0, 100});
        assertThat(selection.survivors()).containsExactly(1);
    }

    @Test
    void aVarianceFloorDelaysTheDecision() {
        KimNelson certain = new KimNelson(2, 5, 0.05, 1, 0);
        KimNelson careful = new KimNelson(2, 5, 0.05, 1, 4);
        for (int i = 0; i < 6; i++) {
            certain.observe(new double[] {0, 1});
            careful.observe(new double[] {0, 1});
        }
        assertThat(certain.survivors()).containsExactly(1);
        assertThat(careful.survivors()).hasSize(2);
    }

    @Test
    void selectionsAreChecked() {
        assertThatThrownBy(() -> new KimNelson(2, 5, 0.05, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new KimNelson(2, 5, 0.05, 1, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new KimNelson(1, 5, 0.05, 1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new KimNelson(2, 1, 0.05, 1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void allLooksTogetherSpendTheWholeError() {
        for (AlphaSpending spending : AlphaSpending.values()) {
            double sum = 0;
            double before = 0;
            for (double fraction : new double[] {0.125, 0.25, 0.5, 1}) {
                double look = spending.atLook(before, fraction, 0.05);
                assertThat(look).isPositive();
                sum += look;
                before = fraction;
            }
            assertThat(sum).isCloseTo(0.05, within(1e-12));
            assertThat(spending.spent(0, 0.05)).isZero();
            assertThatThrownBy(() -> spending.spent(1.1, 0.05)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> spending.spent(0.5, 0)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void confidenceSequencesAreWiderThanOneIntervalAndShrink() {
        Interval early = ConfidenceSequence.of(5, 50, 0.95);
        Interval late = ConfidenceSequence.of(500, 5000, 0.95);
        assertThat(early.width())
                .isGreaterThan(BinomialInterval.CLOPPER_PEARSON.of(5, 50, 0.95).width());
        assertThat(late.width()).isLessThan(early.width() / 5);
        assertThat(ConfidenceSequence.of(50, 50, 0.95).high()).isEqualTo(1);
    }
}
