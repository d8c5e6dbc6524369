package org.shutoffbench.controller.strategy.adaptive;

import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.BASE;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.LOG_RATE;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.LOG_SEATING;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.PREVAILING;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.PREVAILING_START;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.SCALE_ERROR;
import static org.shutoffbench.controller.strategy.adaptive.JointLawGuess.SNUG;

/** Where a fit starts: the torque that each stretch seems to have needed, and a straight line through those past snug. */
final class FirstGuess {

    /** A nut that runs into snug without a blow rests at more than this, N m. */
    private static final float RAN_INTO_SNUG_NM = 12;
    /** Torque that rises faster than this over two stretches, N m/rad, and by a quarter, comes from the joint. */
    private static final float LEAST_RATE = 12;

    private static final float LEAST_RISE = 1.25f;
    private static final float FREE_BASE_NM = 0.3f;

    private final ToolCalibration tool;
    private final BlowHistory history;
    private final float[] apparentNm = new float[BlowHistory.CAPACITY];

    private float levelNm;

    FirstGuess(ToolCalibration tool, BlowHistory history) {
        this.tool = tool;
        this.history = history;
    }

    /** Torque that the newest blows seem to have needed beyond what they needed before snug, N m. */
    float risenNm() {
        int last = history.size - 1;
        int from = Math.max(0, last - 1);
        float energy = 0;
        for (int i = from; i <= last; i++) {
            energy += history.energyJ[i];
        }
        float newest = apparent(energy, history.startRad[last + 1] - history.startRad[from], last + 1f - from);
        return newest - levelNm;
    }

    private float apparent(float energyJ, float lengthRad, float blows) {
        float perRad = energyJ / Math.max(1e-3f, lengthRad);
        float tauPerNm = tool.tauPerNm(energyJ / blows);
        float torque = 0.67f * perRad;
        tool.lookUp(torque, tauPerNm);
        return tool.share * perRad;
    }

    /** True if the nut ran into snug before the first rest. */
    boolean ranIntoSnug(boolean spunFreely) {
        return spunFreely
                && history.size > 0
                && apparent(history.energyJ[0], history.lengthRad(0), history.blows[0]) > RAN_INTO_SNUG_NM;
    }

    /** Writes a guess; false if no stretch lies past snug yet. */
    boolean make(boolean spunFreely, JointPrior prior, JointLawGuess into) {
        for (int i = 0; i < history.size; i++) {
            apparentNm[i] = apparent(history.energyJ[i], history.lengthRad(i), history.blows[i]);
        }
        boolean ranIn = ranIntoSnug(spunFreely);
        int past = ranIn ? 0 : firstPastSnug();
        if (past >= history.size) {
            return false;
        }
        float base = spunFreely ? FREE_BASE_NM : Math.min(apparentNm[0], apparentNm[Math.max(0, past - 1)]);
        levelNm = ranIn ? base : apparentNm[Math.max(0, past - 1)];
        lineThrough(past, prior, into);
        into.value[BASE] = base;
        into.value[PREVAILING] = Math.max(0, levelNm - base);
        into.value[PREVAILING_START] = into.value[SNUG] - prior.leadRad;
        into.value[SCALE_ERROR] = 0;
        into.prepare();
        return true;
    }

    private int firstPastSnug() {
        for (int i = 0; i + 2 < history.size; i++) {
            float rise = apparentNm[i + 2] - apparentNm[i];
            if (rise > (LEAST_RISE - 1) * apparentNm[i] && rise > LEAST_RATE * (middle(i + 2) - middle(i))) {
                return i + 1;
            }
        }
        return history.size;
    }

    private float middle(int stretch) {
        return 0.5f * (history.startRad[stretch] + history.startRad[stretch + 1]);
    }

    private void lineThrough(int from, JointPrior prior, JointLawGuess into) {
        float count = 0;
        float angle = 0;
        float torque = 0;
        for (int i = from; i < history.size; i++) {
            count++;
            angle += middle(i);
            torque += apparentNm[i];
        }
        angle /= count;
        torque /= count;
        float believed = (float) Math.exp(prior.mean[LOG_RATE]);
        float square = 1e-3f;
        float product = 1e-3f * believed;
        for (int i = from; i < history.size; i++) {
            float off = middle(i) - angle;
            square += off * off;
            product += off * (apparentNm[i] - torque);
        }
        float rate = Math.max(0.3f * believed, Math.min(4 * believed, product / square));
        float seating = (float) Math.exp(prior.mean[LOG_SEATING]);
        into.value[LOG_RATE] = (float) Math.log(rate);
        into.value[LOG_SEATING] = prior.mean[LOG_SEATING];
        into.value[SNUG] = angle - Math.max(0, torque - levelNm) / rate - 0.5f * seating;
    }
}
