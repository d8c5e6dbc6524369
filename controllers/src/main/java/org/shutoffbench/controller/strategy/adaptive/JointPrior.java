package org.shutoffbench.controller.strategy.adaptive;

import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.BASE;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.COUNT;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.LOG_RATE;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.LOG_SEATING;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.PREVAILING;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.PREVAILING_START;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.SCALE_ERROR;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.SNUG;

import org.shutoffbench.controller.Settings;

/** What is believed of joints before the first blow: independent normal numbers, and a prevailing start tied to snug. */
final class JointPrior {

    private static final float TURN_RAD = (float) (2 * Math.PI);
    private static final float ANYWHERE_RAD = 100;
    /** Below about 1 N m the cam does not slip and the nut spins. */
    private static final float FREE_NM = 0.4f;

    private static final float STIFF_NM = 6;
    private static final float STIFF_SPREAD_NM = 5;
    private static final float UNNOTICED_NM = 2;

    final float[] mean = new float[COUNT];
    final float[] precision = new float[COUNT];
    final float leadRad;
    final float leadPrecision;

    private final float prevailingNm;
    private final float prevailingSpreadNm;

    JointPrior(Settings settings) {
        set(
                LOG_RATE,
                (float) Math.log(settings.get(AdaptiveSettings.RATE)),
                settings.get(AdaptiveSettings.RATE_SPREAD));
        set(
                LOG_SEATING,
                (float) Math.log(settings.get(AdaptiveSettings.SEATING)),
                settings.get(AdaptiveSettings.SEATING_SPREAD));
        set(SCALE_ERROR, 0, settings.get(AdaptiveSettings.ENERGY_SPREAD));
        set(SNUG, 0, ANYWHERE_RAD);
        set(PREVAILING_START, 0, ANYWHERE_RAD);
        prevailingNm = settings.get(AdaptiveSettings.PREVAILING);
        prevailingSpreadNm = settings.get(AdaptiveSettings.PREVAILING_SPREAD);
        leadRad = settings.get(AdaptiveSettings.LEAD) * TURN_RAD;
        float leadSpreadRad = settings.get(AdaptiveSettings.LEAD_SPREAD) * TURN_RAD;
        leadPrecision = 1 / (leadSpreadRad * leadSpreadRad);
    }

    private void set(int number, float believed, float spread) {
        mean[number] = believed;
        precision[number] = 1 / (spread * spread);
    }

    /** What the run-down tells of torque that does not clamp: little where the nut span freely, none locks it where it ran
     * into snug. */
    void believe(boolean spunFreely, boolean ranIntoSnug) {
        if (spunFreely) {
            set(BASE, FREE_NM, FREE_NM);
        } else {
            set(BASE, STIFF_NM, STIFF_SPREAD_NM);
        }
        if (ranIntoSnug) {
            set(PREVAILING, 0, UNNOTICED_NM);
        } else {
            set(PREVAILING, prevailingNm, prevailingSpreadNm);
        }
    }

    /** Adds the prior to normal equations (rows of {@code COUNT}) and right-hand side; returns its share of the cost. */
    float addTo(float[] normal, float[] right, float[] value) {
        float cost = 0;
        for (int i = 0; i < COUNT; i++) {
            float off = mean[i] - value[i];
            normal[i * COUNT + i] += precision[i];
            right[i] += precision[i] * off;
            cost += precision[i] * off * off;
        }
        float off = leadRad - (value[SNUG] - value[PREVAILING_START]);
        normal[SNUG * COUNT + SNUG] += leadPrecision;
        normal[PREVAILING_START * COUNT + PREVAILING_START] += leadPrecision;
        normal[PREVAILING_START * COUNT + SNUG] -= leadPrecision;
        right[SNUG] += leadPrecision * off;
        right[PREVAILING_START] -= leadPrecision * off;
        return cost + leadPrecision * off * off;
    }
}
