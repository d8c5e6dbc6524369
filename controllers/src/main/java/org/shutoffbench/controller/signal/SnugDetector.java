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
    private static final float PLATEAU_WANDER_NM2 = 4f;

    private final float slowestSeatingNmPerRad;
    private final Cusum rise = new Cusum(ALLOWANCE, THRESHOLD);
    private final RandomWalkKalman plateau = new RandomWalkKalman();
    private float torqueNm;
    private float restRad;
    private float riseBeganRad;
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
        plateau.reset(0, Float.POSITIVE_INFINITY);
        torqueNm = Float.NaN;
        restRad = 0;
        riseBeganRad = Float.NaN;
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
        if (advance > FREE_ADVANCE_RAD) {
            torqueNm = 0;
            riseBeganRad = afterRad;
            return false;
        }
        float before = ranFree || torqueNm == 0 ? FREE_TORQUE_NM : torqueNm;
        float over = ranFree ? COMING_TO_REST_RAD : 0;
        torqueNm = workJ / Math.max(advance, LEAST_ADVANCE_RAD);
        float squareError = squareError(workJ);
        if (ranFree) {
            riseBeganRad = beforeRad;
            plateau.reset(0, Float.POSITIVE_INFINITY);
        }
        if (Float.isNaN(before)) {
            riseBeganRad = beforeRad;
            plateau.update(torqueNm, squareError);
            return false;
        }
        judge(before, advance + over, afterRad, squareError);
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
        return Float.isInfinite(plateau.variance()) ? 0 : plateau.level();
    }

    /** Torque read from the last blow, N m; NaN before any. */
    public float lastTorqueNm() {
        return torqueNm;
    }

    private void judge(float beforeNm, float overRad, float afterRad, float squareError) {
        float expected = slowestSeatingNmPerRad * Math.max(0, overRad);
        float deviation = (torqueNm - beforeNm - expected) / (float) Math.sqrt(2 * squareError);
        snug = rise.update(deviation);
        if (rise.sum() == 0) {
            riseBeganRad = afterRad;
            plateau.predict(0, PLATEAU_WANDER_NM2);
            plateau.update(torqueNm, squareError);
        }
    }

    private float squareError(float workJ) {
        float error = LEAST_ERROR_NM + torqueNm * torqueNm * ADVANCE_ERROR_RAD / workJ;
        return error * error;
    }
}
