package org.shutoffbench.controller.strategy;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;
import org.shutoffbench.controller.Settings;

/**
 * A full quadratic in standardised features: constant, each feature, each product of two. A feature is cut at four standard
 * deviations of the joints it was trained on, so that nothing is extrapolated far.
 */
public final class QuadraticModel {

    /** Standard deviations at which a feature is cut. */
    public static final float CUT = 4;

    private static final int FEATURES = BlowFeatures.COUNT;

    /** Number of terms. */
    public static final int TERMS = 1 + FEATURES + FEATURES * (FEATURES + 1) / 2;

    /** A scale so wide that nothing is ever cut: of a model that was not trained. */
    private static final double UNTRAINED_SCALE = 1e5;

    private final float[] means = new float[FEATURES];
    private final float[] scales = new float[FEATURES];
    private final float[] coefficients = new float[TERMS];
    private final float[] cut = new float[FEATURES];
    private float farthest;

    QuadraticModel(Settings settings) {
        for (int i = 0; i < FEATURES; i++) {
            means[i] = settings.get(mean(i));
            scales[i] = settings.get(scale(i));
        }
        for (int t = 0; t < TERMS; t++) {
            coefficients[t] = settings.get(coefficient(t));
        }
    }

    /** Name of the setting that holds a feature's mean. */
    public static String mean(int feature) {
        return "mean " + feature;
    }

    /** Name of the setting that holds a feature's standard deviation. */
    public static String scale(int feature) {
        return "scale " + feature;
    }

    /** Name of the setting that holds a term's coefficient. */
    public static String coefficient(int term) {
        return "coefficient " + term;
    }

    static List<Setting> settings() {
        List<Setting> settings = new ArrayList<>();
        for (int i = 0; i < FEATURES; i++) {
            String of = BlowFeatures.NAMES.get(i);
            settings.add(new Setting(mean(i), "1", -1e6, 1e6, 0, "mean in training: " + of, Role.LEARNED));
        }
        for (int i = 0; i < FEATURES; i++) {
            String of = BlowFeatures.NAMES.get(i);
            settings.add(new Setting(
                    scale(i), "1", 1e-6, 1e6, UNTRAINED_SCALE, "standard deviation in training: " + of, Role.LEARNED));
        }
        for (int t = 0; t < TERMS; t++) {
            settings.add(new Setting(coefficient(t), "1", -1e6, 1e6, 0, "of term " + t + ", N m", Role.LEARNED));
        }
        return settings;
    }

    void reset() {
        farthest = 0;
    }

    /** The value at the features of a blow, N m; finite wherever they are. */
    float valueNm(float[] features) {
        farthest = 0;
        for (int i = 0; i < FEATURES; i++) {
            float z = (features[i] - means[i]) / scales[i];
            farthest = Math.max(farthest, Math.abs(z));
            cut[i] = Math.max(-CUT, Math.min(CUT, z));
        }
        float sum = coefficients[0];
        int term = 1;
        for (int i = 0; i < FEATURES; i++) {
            sum += coefficients[term++] * cut[i];
        }
        for (int i = 0; i < FEATURES; i++) {
            for (int j = i; j < FEATURES; j++) {
                sum += coefficients[term++] * cut[i] * cut[j];
            }
        }
        return sum;
    }

    /** Farthest feature at the last value, in standard deviations from its mean in training. */
    float farthest() {
        return farthest;
    }

    /**
     * Writes out the terms of a row of features, in the order of the coefficients.
     *
     * @param z standardised and cut features
     * @param into receives {@link #TERMS} numbers
     */
    public static void terms(double[] z, double[] into) {
        into[0] = 1;
        int term = 1;
        for (double feature : z) {
            into[term++] = feature;
        }
        for (int i = 0; i < z.length; i++) {
            for (int j = i; j < z.length; j++) {
                into[term++] = z[i] * z[j];
            }
        }
    }
}
