package org.shutoffbench.controller.signal;

/**
 * Finds where a joint begins to clamp, from the anvil's advance per blow. A blow does about the same work each time, so
 * its advance tells the resisting torque; prevailing torque grows slowly with angle, a joint that seats quickly. A
 * cumulative sum of what the torque rises beyond the slow growth, in units of its own standard error, raises the alarm.
 */
public final class SnugDetector {

    /** An advance above this is a nut that spins freely between blows, rad. */
    private static final float FREE_ADVANCE_RAD = 0.75f;
    /** Travel without a blow that shows a free rundown, rad: half a turn. */
    private static final float FREE_TRAVEL_RAD = 3.14f;
    /** Least advance that is told from noise, rad: 0.3 deg. */
    private static final float LEAST_ADVANCE_RAD = 0.005f;
    /** Standard error of a measured advance, rad: a quarter of a degree, mostly arm sway (assumed). */
    private static final float ADVANCE_ERROR_RAD = 0.0044f;
    /** Torque that no reading is better than, N m. */
    private static final float LEAST_ERROR_NM = 0.5f;
    /** Torque above which a tool begins to strike instead of turning, N m (assumed). */
    private static final float FREE_TORQUE_NM = 3f;
    /** Angle over which a nut that spun comes to rest before the first blow, rad (assumed). */
    private static final float COMING_TO_REST_RAD = 0.5f;

    private static final float ALLOWANCE = 0.5f;
    private static final float THRESHOLD = 4f;
    /** Wander of the running torque from blow to blow, N m squared (assumed). */
    private static final float WANDER_NM2 = 4f;

    private final float slowestSeatingNmPerRad;
    private final Cusum rise = new Cusum(ALLOWANCE, THRESHOLD);
    private final RandomWalkKalman running = new RandomWalkKalman();
    private float torqueNm;
    private float runningAtRad;
    private float restRad;
    private float riseBeganRad;
    private boolean free;
    private boolean snug;

    /**
     * @param slowestSeatingNmPerRad torque per angle above which the joint is taken to seat, N m/rad; above the growth
     *     of prevailing torque
     */
    public SnugDetector(float slowestSeatingNmPerRad) {
        if (!(slowestSeatingNmPerRad > 0)) {
            throw new IllegalArgumentException("slowest seating must be positive");
        }
        this.slowestSeatingNmPerRad = slowestSeatingNmPerRad;
        reset();
    }

    public void reset() {
        rise.reset();
        running.reset(0, Float.POSITIVE_INFINITY);
        torqueNm = Float.NaN;
        runningAtRad = 0;
        restRad = 0;
        riseBeganRad = Float.NaN;
        free = false;
        snug = false;
    }

    /**
     * Takes the measured step of a blow; one that is not finite is skipped.
     *
     * @param beforeRad anvil angle at rest before the blow, rad
     * @param afterRad anvil angle at rest after it, rad
     * @param workJ work that the blow does on the nut, J
     * @return true from the blow on that shows the joint to be snug
     */
    public boolean update(float beforeRad, float afterRad, float workJ) {
        float advance = afterRad - beforeRad;
        if (snug || !Float.isFinite(advance)) {
            return snug;
        }
        boolean ranFree = beforeRad - restRad > FREE_TRAVEL_RAD;
        restRad = afterRad;
        torqueNm = workJ / Math.max(advance, LEAST_ADVANCE_RAD);
        if (advance > FREE_ADVANCE_RAD) {
            spinFree(afterRad, afterRad);
            return false;
        }
        if (ranFree) {
            spinFree(beforeRad - COMING_TO_REST_RAD, beforeRad);
        }
        float error = LEAST_ERROR_NM + torqueNm * torqueNm * ADVANCE_ERROR_RAD / workJ;
        judge(afterRad, error * error);
        return snug;
    }

    /** True once the joint clamps. */
    public boolean isSnug() {
        return snug;
    }

    /** Anvil angle where the rise began, rad: the last rest before it. NaN before any blow. */
    public float snugAngleRad() {
        return riseBeganRad;
    }

    /** Torque that the nut ran on with before the rise, N m; 0 where it spun freely. */
    public float runningTorqueNm() {
        return free ? 0 : running.level();
    }

    /** Torque read from the last blow, N m; NaN before any. */
    public float lastTorqueNm() {
        return torqueNm;
    }

    private void spinFree(float angleRad, float riseRad) {
        free = true;
        running.reset(FREE_TORQUE_NM, WANDER_NM2);
        runningAtRad = angleRad;
        riseBeganRad = riseRad;
        rise.reset();
    }

    private void judge(float afterRad, float squareError) {
        running.predict(0, WANDER_NM2);
        float expected = running.level() + slowestSeatingNmPerRad * Math.max(0, afterRad - runningAtRad);
        float deviation = (torqueNm - expected) / (float) Math.sqrt(running.variance() + squareError);
        snug = rise.update(deviation);
        if (rise.sum() == 0) {
            free = false;
            running.update(torqueNm, squareError);
            runningAtRad = afterRad;
            riseBeganRad = afterRad;
        }
    }
}
