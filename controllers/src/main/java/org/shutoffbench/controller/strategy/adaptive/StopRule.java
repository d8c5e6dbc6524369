package org.shutoffbench.controller.strategy.adaptive;

/**
 * Looks one blow ahead: what the clamping torque is, what it will be after a full blow, and what drive level the next blow
 * should have to come closest to the target.
 */
final class StopRule {

    /** Answer of {@link #nextLevel}: no further blow. */
    static final float STOP = 0;

    private static final float FULL = 1;
    private static final int LOOKS = 3;
    private static final float LEAST_NM = 0.5f;

    private final ToolCalibration tool;
    private final boolean trims;

    /** Clamping torque now, N m. */
    float nowNm;
    /** Energy that a last blow of the chosen level should have, J. */
    float lastBlowJ;
    /** Clamping torque after one more full blow, N m. */
    float nextNm;

    StopRule(ToolCalibration tool, boolean trims) {
        this.tool = tool;
        this.trims = trims;
    }

    /** Drive level of the next blow: {@link #STOP}, 1 for a full blow after which to look again, between for a last one. */
    float nextLevel(JointLawGuess guess, float angleRad, float blowEnergyJ, float meanSpeedRadPerS, float targetNm) {
        look(guess, angleRad, blowEnergyJ);
        float wanted = (targetNm - nowNm) / Math.max(LEAST_NM, nextNm - nowNm);
        if (!trims) {
            return wanted < 0.5f ? STOP : FULL;
        }
        float least = tool.leastTrim(meanSpeedRadPerS);
        lastBlowJ = Math.max(wanted, least) * blowEnergyJ;
        if (wanted < 0.5f * least) {
            return STOP;
        }
        return tool.levelForShare(wanted, meanSpeedRadPerS);
    }

    private void look(JointLawGuess guess, float angleRad, float blowEnergyJ) {
        nowNm = guess.clampingNm(angleRad);
        float total = nowNm + guess.freeNm(angleRad);
        float tauPerNm = tool.tauPerNm(blowEnergyJ);
        float advance = 0;
        for (int i = 0; i < LOOKS; i++) {
            float after = angleRad + advance;
            float mean = Math.max(LEAST_NM, 0.5f * (total + guess.clampingNm(after) + guess.freeNm(after)));
            tool.lookUp(mean, tauPerNm);
            advance = guess.scale * blowEnergyJ * tool.share / mean;
        }
        nextNm = guess.clampingNm(angleRad + advance);
    }
}
