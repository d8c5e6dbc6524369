package org.shutoffbench.controller.strategy;

import org.shutoffbench.controller.signal.RampKalman;
import org.shutoffbench.controller.signal.SnugDetector;

/**
 * Torque that clamps, followed blow by blow: T = W/d is the mean torque over an advance d, a Kalman filter carries it along the
 * angle, and what the nut ran on with before it seated is subtracted.
 */
final class ClampingTorque {

    private static final float LEAST_ADVANCE_RAD = 0.005f;
    private static final float ADVANCE_ERROR_RAD = 0.0044f;
    /** Scatter of a blow's work over its mean (assumed). */
    private static final float WORK_ERROR = 0.03f;
    /** Wander of torque over one blow, N m squared, and of the rate, (N m/rad) squared (assumed). */
    private static final float TORQUE_WANDER = 1f;

    private static final float RATE_WANDER = 100f;
    /** Rates of joints before anything is known: about 100 N m/rad, anything up to 300 (assumed). */
    private static final float USUAL_RATE = 100f;

    private static final float RATE_VARIANCE = 80f * 80f;

    private final SnugDetector snug;
    private final RampKalman torque = new RampKalman();
    private float angleRad;
    private boolean following;

    ClampingTorque(float slowestSeatingNmPerRad) {
        this.snug = new SnugDetector(slowestSeatingNmPerRad);
    }

    void reset() {
        snug.reset();
        torque.reset(0, 0, 0, 0);
        following = false;
        angleRad = 0;
    }

    /** Takes a blow's step and work; steps that are not finite are skipped. */
    void update(float beforeRad, float afterRad, float workJ) {
        float advance = afterRad - beforeRad;
        if (!Float.isFinite(advance)) {
            return;
        }
        boolean isSnug = snug.update(beforeRad, afterRad, workJ);
        if (!isSnug) {
            return;
        }
        float moved = Math.max(advance, LEAST_ADVANCE_RAD);
        float meanNm = workJ / moved;
        float error = meanNm * (ADVANCE_ERROR_RAD / moved + WORK_ERROR);
        if (!following) {
            following = true;
            torque.reset(meanNm, error * error, USUAL_RATE, RATE_VARIANCE);
            torque.predict(moved / 2, TORQUE_WANDER, 0);
        } else {
            torque.predict(afterRad - angleRad - moved / 2, TORQUE_WANDER, RATE_WANDER);
            torque.update(meanNm, error * error);
            torque.predict(moved / 2, 0, 0);
        }
        angleRad = afterRad;
    }

    boolean isSnug() {
        return following;
    }

    /** Clamping torque at the present rest, N m; NaN before snug. */
    float nowNm() {
        return following ? torque.level() - snug.runningTorqueNm() : Float.NaN;
    }

    /** Clamping torque after one more blow of the given work, N m: (T + R d/2) d = W solved for the rise R d. */
    float afterNextBlowNm(float workJ) {
        float rate = Math.max(0, torque.slope());
        float level = Math.max(0, torque.level());
        float after = (float) Math.sqrt(level * level + 2 * rate * workJ);
        return after - snug.runningTorqueNm();
    }

    /** Anvil angle where the joint began to clamp, rad; NaN before it is known. */
    float snugAngleRad() {
        return following ? snug.snugAngleRad() : Float.NaN;
    }

    float runningTorqueNm() {
        return snug.runningTorqueNm();
    }

    float rateNmPerRad() {
        return following ? torque.slope() : Float.NaN;
    }
}
