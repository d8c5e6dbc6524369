package org.shutoffbench.controller.strategy.adaptive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class JointLawGuessAnalyticTest {

    private static JointLawGuess law() {
        JointLawGuess law = new JointLawGuess();
        float[] values = {4.6f, 0.4f, -1.2f, 2, 9, -2.5f, 0};
        System.arraycopy(values, 0, law.value, 0, values.length);
        law.prepare();
        return law;
    }

    @ParameterizedTest
    @ValueSource(floats = {-3, -1, 0.3f, 0.5f, 0.75f, 1.5f, 4.5f})
    void energyIsTheIntegralOfTorque(float angleRad) {
        JointLawGuess law = law();
        float h = 1e-2f;
        law.look(angleRad + h);
        double above = law.energyJ;
        law.look(angleRad - h);
        double below = law.energyJ;
        law.look(angleRad);
        assertThat((above - below) / (2 * h)).isCloseTo(law.torqueNm, within(0.05 + 2e-3 * law.torqueNm));
        assertThat(law.torqueNm)
                .isCloseTo(law.clampingNm(angleRad) + law.freeNm(angleRad), within(1e-4f * (1 + law.torqueNm)));
    }

    @ParameterizedTest
    @ValueSource(floats = {-1, 0.5f, 0.8f, 1.5f, 4.5f})
    void slopesAreDifferences(float angleRad) {
        float[] torqueSlopes = new float[JointLawGuess.COUNT];
        law().addTorqueSlopes(angleRad, 1, torqueSlopes);
        float[] clampingSlopes = new float[JointLawGuess.COUNT];
        law().clampingSlopes(angleRad, clampingSlopes);
        JointLawGuess middle = law();
        middle.look(angleRad);
        for (int p = 0; p < JointLawGuess.COUNT - 1; p++) {
            float h = 5e-3f;
            JointLawGuess up = law();
            up.value[p] += h;
            up.prepare();
            up.look(angleRad);
            JointLawGuess down = law();
            down.value[p] -= h;
            down.prepare();
            down.look(angleRad);
            double energy = (up.energyJ - down.energyJ) / (2.0 * h);
            double torque = (up.torqueNm - down.torqueNm) / (2.0 * h);
            double clamping = (up.clampingNm(angleRad) - down.clampingNm(angleRad)) / (2.0 * h);
            assertThat((double) middle.slope[p])
                    .as("energy " + p)
                    .isCloseTo(energy, within(0.05 + 0.01 * Math.abs(energy)));
            assertThat((double) torqueSlopes[p])
                    .as("torque " + p)
                    .isCloseTo(torque, within(0.05 + 0.01 * Math.abs(torque)));
            if (p <= JointLawGuess.LOG_SEATING) {
                assertThat((double) clampingSlopes[p])
                        .as("clamping " + p)
                        .isCloseTo(clamping, within(0.05 + 0.01 * Math.abs(clamping)));
            }
        }
    }

    @Test
    void beforeSnugNothingClamps() {
        assertThat(law().clampingNm(0.39f)).isZero();
        assertThat(law().freeNm(-3)).isEqualTo(2);
        assertThat(law().freeNm(100)).isEqualTo(11);
    }
}
