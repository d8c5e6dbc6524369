package org.shutoffbench.controller.strategy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shutoffbench.controller.Settings;

class QuadraticModelTest {

    private static QuadraticModel model(Map<String, Double> learned) {
        return new QuadraticModel(Settings.of(QuadraticModel.settings(), learned));
    }

    private static Map<String, Double> unitScales() {
        Map<String, Double> learned = new HashMap<>();
        for (int i = 0; i < BlowFeatures.COUNT; i++) {
            learned.put(QuadraticModel.scale(i), 1.0);
        }
        return learned;
    }

    @Test
    void untrainedItCorrectsNothingAndCallsNothingFar() {
        QuadraticModel model = model(Map.of());
        float[] features = {84, 90, 8, 150, 140, 95, 0.5f, 7, 60};
        assertThat(model.valueNm(features)).isZero();
        assertThat(model.farthest()).isLessThan(0.01f);
    }

    @Test
    void itIsTheSumOfTheTermsThatTrainingFits() {
        Random random = new Random(3);
        Map<String, Double> learned = unitScales();
        double[] coefficients = new double[QuadraticModel.TERMS];
        for (int t = 0; t < coefficients.length; t++) {
            coefficients[t] = random.nextGaussian();
            learned.put(QuadraticModel.coefficient(t), coefficients[t]);
        }
        learned.put(QuadraticModel.mean(2), 0.5);
        learned.put(QuadraticModel.scale(2), 2.0);
        QuadraticModel model = model(learned);
        float[] features = new float[BlowFeatures.COUNT];
        double[] z = new double[BlowFeatures.COUNT];
        for (int i = 0; i < features.length; i++) {
            features[i] = (float) random.nextGaussian();
            z[i] = i == 2 ? (features[i] - 0.5) / 2 : features[i];
        }
        double[] terms = new double[QuadraticModel.TERMS];
        QuadraticModel.terms(z, terms);
        double sum = 0;
        for (int t = 0; t < terms.length; t++) {
            sum += coefficients[t] * terms[t];
        }
        // Single precision over 55 terms of about unit size.
        assertThat((double) model.valueNm(features)).isCloseTo(sum, within(2e-5));
    }

    @Test
    void aFeatureFarFromTrainingIsCutAndReported() {
        Map<String, Double> learned = unitScales();
        learned.put(QuadraticModel.coefficient(1), 10.0);
        QuadraticModel model = model(learned);
        float[] features = new float[BlowFeatures.COUNT];
        features[0] = 3;
        assertThat(model.valueNm(features)).isEqualTo(30);
        features[0] = -700;
        assertThat(model.valueNm(features)).isEqualTo(-10 * QuadraticModel.CUT);
        assertThat(model.farthest()).isEqualTo(700);
        model.reset();
        assertThat(model.farthest()).isZero();
    }

    @Test
    void everyProductOfTwoFeaturesHasOneTerm() {
        double[] terms = new double[QuadraticModel.TERMS];
        double[] z = {2, 3, 5, 7, 11, 13, 17, 19, 23};
        QuadraticModel.terms(z, terms);
        // Products of primes tell which pair they came from.
        assertThat(terms).doesNotHaveDuplicates().startsWith(1, 2, 3, 5).contains(4, 6, 23 * 23, 19 * 23);
        assertThat(terms).hasSize(55);
    }
}
