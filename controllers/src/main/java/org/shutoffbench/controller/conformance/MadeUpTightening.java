package org.shutoffbench.controller.conformance;

import org.shutoffbench.controller.SensorFrame;

/**
 * A recording that looks like an impact tool on a joint and is nothing of the kind: made up by simple arithmetic so that
 * strategies find rundown, blows, falling steps and rising torque in it. All figures are invented; nothing physical may
 * be concluded from it.
 */
final class MadeUpTightening implements Recording {

    private static final float PERIOD_S = 1f / Subject.RATE_HZ;
    private static final float SPIN_UP_S = 0.03f;
    private static final float FREE_SPEED_RAD_PER_S = 150f;
    private static final float BLOW_SPACING_S = 0.023f;
    private static final float BLOW_WORK_J = 2.7f;
    private static final float PULSE_S = 0.001f;

    private final String title;
    private final SensorFrame[] samples;
    private final float snugRad;
    private final float rateNmPerRad;
    private final float prevailingNm;

    /**
     * @param seconds length of the recording
     * @param snugRad anvil angle at which the joint closes
     * @param rateNmPerRad torque per angle from there
     * @param prevailingNm torque of the locking element over the last 6 rad before
     */
    MadeUpTightening(String title, float seconds, float snugRad, float rateNmPerRad, float prevailingNm) {
        this.title = title;
        this.samples = new SensorFrame[Math.round(seconds * Subject.RATE_HZ)];
        this.snugRad = snugRad;
        this.rateNmPerRad = rateNmPerRad;
        this.prevailingNm = prevailingNm;
        write();
    }

    /** A plain joint of middling stiffness: 2 turns to snug, then blows that advance less and less. */
    static MadeUpTightening plainJoint() {
        return new MadeUpTightening("a made-up plain joint", 3f, 12.6f, 150f, 0.2f);
    }

    /** A joint with 8 N m of prevailing torque: blows begin a turn before snug. */
    static MadeUpTightening lockNut() {
        return new MadeUpTightening("a made-up lock nut", 4f, 15f, 110f, 8f);
    }

    /** Hammering for many seconds on a nut that does not give. */
    static MadeUpTightening endlessHammering() {
        return new MadeUpTightening("made-up hammering without end", 20f, 3f, 1e5f, 0.2f);
    }

    @Override
    public int ticks() {
        return samples.length;
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public void sample(int tick, SensorFrame frame) {
        Frames.copy(samples[tick], frame);
    }

    private void write() {
        float speed = 0;
        float carrier = 0;
        float anvil = 0;
        float anvilGoal = 0;
        float sinceBlow = Float.POSITIVE_INFINITY;
        float nextBlow = 0.041f;
        float peakNm = 0;
        boolean hammering = false;
        for (int i = 0; i < ticks(); i++) {
            float time = i * PERIOD_S;
            boolean free = !hammering && resistance(anvil) < 5f;
            speed += (FREE_SPEED_RAD_PER_S - speed) * PERIOD_S / SPIN_UP_S * (free ? 1f : 1.5f);
            carrier += speed * PERIOD_S;
            boolean blow = time >= nextBlow && (hammering || anvil < 1e-3f || !free);
            if (free && time > 0.05f) {
                anvil += speed * PERIOD_S;
                anvilGoal = anvil;
                nextBlow = time + PERIOD_S;
            } else if (blow) {
                hammering = time > 0.05f;
                nextBlow = time + BLOW_SPACING_S;
                sinceBlow = 0;
                speed *= 0.75f;
                float torque = resistance(anvil);
                anvilGoal = anvil + Math.min(0.3f, advance(torque));
                peakNm = 30f + resistance(anvilGoal);
            } else {
                sinceBlow += PERIOD_S;
            }
            anvil += (anvilGoal - anvil) * Math.min(1f, PERIOD_S / PULSE_S * 4f);
            samples[i] = frame(i, carrier, speed, anvil, blow, sinceBlow, peakNm);
        }
    }

    /** Advance d of a blow that does work (T + R d/2) d, rad. */
    private float advance(float torqueNm) {
        return (float) (Math.sqrt(torqueNm * torqueNm + 2 * rateNmPerRad * BLOW_WORK_J) - torqueNm) / rateNmPerRad;
    }

    private float resistance(float anvilRad) {
        float thread = anvilRad > snugRad - 6f ? prevailingNm : 0.2f;
        return thread + rateNmPerRad * Math.max(0f, anvilRad - snugRad);
    }

    private static SensorFrame frame(
            int i, float carrier, float speed, float anvil, boolean blow, float sinceBlow, float peakNm) {
        float sway = 0.02f * (float) Math.sin(2 * Math.PI * 1.3 * i * PERIOD_S);
        float pulse = sinceBlow < PULSE_S ? (float) Math.sin(Math.PI * sinceBlow / PULSE_S) : 0;
        SensorFrame frame = new SensorFrame();
        frame.carrierAngleRad = carrier;
        frame.carrierSpeedRadPerS = speed + 2f * noise(i, 1);
        frame.motorCurrentA = 20f * (1.2f - speed / FREE_SPEED_RAD_PER_S) + noise(i, 2);
        frame.supplyRatio = 0.97f + 0.01f * noise(i, 3);
        frame.housingAccelerationMPerS2 = 80f * pulse + 3f * noise(i, 4);
        frame.blows = blow ? 1 : 0;
        frame.anvilAngleRad = anvil - sway + 0.008f * noise(i, 5);
        frame.housingRateRadPerS = 0.16f * noise(i, 6);
        frame.torqueNm = peakNm * pulse + 3f * noise(i, 7);
        return frame;
    }

    /** A fixed sequence in [-1, 1]: the low bits of an integer hash of tick and channel. */
    private static float noise(int tick, int channel) {
        return Hash.of(tick, channel) / (float) (1 << 30) - 1f;
    }
}
