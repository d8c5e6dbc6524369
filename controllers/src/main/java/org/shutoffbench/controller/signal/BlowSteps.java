package org.shutoffbench.controller.signal;

/**
 * Measures by how much each blow advances the anvil, from its mean angle at rest shortly before and after, so that arm
 * sway has little time to act. Drop-outs are left out of the means.
 */
public final class BlowSteps {

    private final RingBuffer angles;
    private final int settleSamples;
    private final int afterSamples;
    private final int skipSamples;
    private int untilMeasured = -1;
    private float beforeRad;
    private float afterRad;

    private BlowSteps(StepTiming timing, int sampleRateHz) {
        this.settleSamples = Samples.in(timing.settleS(), sampleRateHz, 0);
        this.afterSamples = Samples.in(timing.afterS(), sampleRateHz, 1);
        this.skipSamples = Samples.in(timing.skipS(), sampleRateHz, afterSamples);
        this.angles = new RingBuffer(Samples.in(timing.beforeS(), sampleRateHz, skipSamples + 1));
    }

    /** For blows reported at first contact. */
    public static BlowSteps fromContacts(int sampleRateHz) {
        return new BlowSteps(StepTiming.AT_CONTACT, sampleRateHz);
    }

    /** For blows reported by a {@link DipDetector}. */
    public static BlowSteps fromDips(int sampleRateHz) {
        return new BlowSteps(StepTiming.AT_DIP, sampleRateHz);
    }

    public void reset() {
        angles.clear();
        untilMeasured = -1;
        beforeRad = Float.NaN;
        afterRad = Float.NaN;
    }

    /**
     * Takes a sample.
     *
     * @param anvilAngleRad anvil angle, rad; NaN where it dropped out
     * @param blow whether a blow was reported since the last sample; a second report before the step is measured is
     *     taken as its double
     * @return true where a step has just been measured
     */
    public boolean update(float anvilAngleRad, boolean blow) {
        angles.add(anvilAngleRad);
        if (blow && untilMeasured < 0) {
            untilMeasured = settleSamples;
        }
        if (untilMeasured < 0) {
            return false;
        }
        untilMeasured--;
        if (untilMeasured >= 0) {
            return false;
        }
        beforeRad = mean(skipSamples, angles.size());
        afterRad = mean(0, afterSamples);
        return true;
    }

    /** Angle at rest before the last measured blow, rad; NaN where unknown. */
    public float beforeRad() {
        return beforeRad;
    }

    /** Angle at rest after the last measured blow, rad; NaN where unknown. */
    public float afterRad() {
        return afterRad;
    }

    /** Advance of the last measured blow, rad; NaN where unknown, below 0 where noise outweighs it. */
    public float advanceRad() {
        return afterRad - beforeRad;
    }

    /** Mean of the finite angles with ages from {@code youngest} to below {@code end}; NaN where there is none. */
    private float mean(int youngest, int end) {
        float newest = angles.get(youngest);
        float reference = Float.isFinite(newest) ? newest : 0;
        float sum = 0;
        int count = 0;
        for (int age = youngest; age < end; age++) {
            float angle = angles.get(age);
            if (Float.isFinite(angle)) {
                sum += angle - reference;
                count++;
            }
        }
        return reference + sum / count;
    }
}
