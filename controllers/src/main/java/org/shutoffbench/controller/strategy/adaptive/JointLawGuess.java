package org.shutoffbench.controller.strategy.adaptive;

import java.util.Arrays;

/**
 * A guess at the law of the joint: T(theta) = b + P ramp(theta - theta_p) + R g(theta - theta_s; x_a), seven numbers with the
 * scale of the blows' energy. Angles count from the first rest.
 */
final class JointLawGuess {

    static final int LOG_RATE = 0;
    static final int SNUG = 1;
    static final int LOG_SEATING = 2;
    static final int BASE = 3;
    static final int PREVAILING = 4;
    static final int PREVAILING_START = 5;
    static final int SCALE_ERROR = 6;
    static final int COUNT = 7;

    /** Angle over which a locking element comes to bear, rad: one turn. */
    static final float RAMP_RAD = (float) (2 * Math.PI);

    final float[] value = new float[COUNT];

    float rate;
    float seatingRad;
    float scale;

    /** Results of {@link #look}: energy from angle 0, its partial derivatives, and torque at the angle. */
    float energyJ;

    float torqueNm;

    final float[] slope = new float[COUNT - 1];

    void reset() {
        Arrays.fill(value, 0);
        Arrays.fill(slope, 0);
        rate = 0;
        seatingRad = 0;
        scale = 0;
        energyJ = 0;
        torqueNm = 0;
    }

    void copyFrom(JointLawGuess other) {
        System.arraycopy(other.value, 0, value, 0, COUNT);
        rate = other.rate;
        seatingRad = other.seatingRad;
        scale = other.scale;
    }

    /** To be called after values were set. */
    void prepare() {
        rate = (float) Math.exp(value[LOG_RATE]);
        seatingRad = (float) Math.exp(value[LOG_SEATING]);
        scale = 1 + value[SCALE_ERROR];
    }

    /** Work to turn the nut from angle 0 to an angle, and its slopes over the first six numbers. */
    void look(float angleRad) {
        float x = angleRad - value[SNUG];
        float joint = 0;
        float overSnug = 0;
        float overSeating = 0;
        if (x > 0) {
            float a = seatingRad;
            if (x < a) {
                overSnug = x * x / (2 * a);
                joint = overSnug * x * (1 / 3f);
                overSeating = -joint;
            } else {
                overSnug = x - 0.5f * a;
                joint = 0.5f * x * overSnug - a * (0.25f * x - a * (1 / 6f));
                overSeating = a * (a * (1 / 3f) - 0.5f * x);
            }
        }
        float y = angleRad - value[PREVAILING_START];
        float thread = 0;
        float overStart = 0;
        if (y > 0) {
            if (y < RAMP_RAD) {
                overStart = y * (1 / RAMP_RAD);
                thread = 0.5f * y * overStart;
            } else {
                overStart = 1;
                thread = y - 0.5f * RAMP_RAD;
            }
        }
        float rateTimesJoint = rate * joint;
        energyJ = value[BASE] * angleRad + value[PREVAILING] * thread + rateTimesJoint;
        torqueNm = value[BASE] + value[PREVAILING] * overStart + rate * overSnug;
        slope[LOG_RATE] = rateTimesJoint;
        slope[SNUG] = -rate * overSnug;
        slope[LOG_SEATING] = rate * overSeating;
        slope[BASE] = angleRad;
        slope[PREVAILING] = thread;
        slope[PREVAILING_START] = -value[PREVAILING] * overStart;
    }

    /** Torque that clamps at an angle, N m. */
    float clampingNm(float angleRad) {
        float x = angleRad - value[SNUG];
        if (x <= 0) {
            return 0;
        }
        return x < seatingRad ? rate * x * x / (2 * seatingRad) : rate * (x - 0.5f * seatingRad);
    }

    /** Torque that does not clamp at an angle, N m. */
    float freeNm(float angleRad) {
        float y = (angleRad - value[PREVAILING_START]) * (1 / RAMP_RAD);
        return value[BASE] + value[PREVAILING] * Math.max(0, Math.min(1, y));
    }

    /** Adds the slopes of the whole torque at an angle over the first six numbers, times a factor. */
    void addTorqueSlopes(float angleRad, float factor, float[] into) {
        float x = angleRad - value[SNUG];
        if (x > 0) {
            float clamping = clampingNm(angleRad);
            boolean seats = x < seatingRad;
            into[LOG_RATE] += factor * clamping;
            into[SNUG] -= factor * (seats ? rate * x / seatingRad : rate);
            into[LOG_SEATING] -= factor * (seats ? clamping : 0.5f * rate * seatingRad);
        }
        float y = (angleRad - value[PREVAILING_START]) * (1 / RAMP_RAD);
        into[BASE] += factor;
        into[PREVAILING] += factor * Math.max(0, Math.min(1, y));
        if (y > 0 && y < 1) {
            into[PREVAILING_START] -= factor * value[PREVAILING] * (1 / RAMP_RAD);
        }
    }

    /** Slopes of the clamping torque at an angle over the first three numbers. */
    void clampingSlopes(float angleRad, float[] into) {
        float x = angleRad - value[SNUG];
        if (x <= 0) {
            into[LOG_RATE] = 0;
            into[SNUG] = 0;
            into[LOG_SEATING] = 0;
        } else if (x < seatingRad) {
            into[LOG_RATE] = clampingNm(angleRad);
            into[SNUG] = -rate * x / seatingRad;
            into[LOG_SEATING] = -into[LOG_RATE];
        } else {
            into[LOG_RATE] = clampingNm(angleRad);
            into[SNUG] = -rate;
            into[LOG_SEATING] = -0.5f * rate * seatingRad;
        }
    }
}
