package org.shutoffbench.controller.strategy.adaptive;

import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/**
 * Makes the verdict of the posterior: how probable is it that the joint ended below its window?
 *
 * <p>The fit takes an arm for more like the believed one than the few rests it saw; a restless arm spreads the torque by
 * the cube root of its restlessness more (found on low joints under doubled sway, docs/adaptive-estimation.md).
 */
final class Certainty {

    private static final float EVEN = 0.5f;

    private final float doubt;
    private final float misfitAllowed;
    private float lowestNm;

    Certainty(Settings settings) {
        doubt = settings.get(AdaptiveSettings.DOUBT);
        misfitAllowed = settings.get(AdaptiveSettings.MISFIT);
    }

    void arm(Target target) {
        lowestNm = target.clampingTorqueNm() * (1 - target.windowFraction());
    }

    /**
     * @param angleRad angle of the nut, from its first rest
     * @param restlessness variance of the arm's sway over the believed one
     */
    Verdict verdict(JointFit fit, float angleRad, float restlessness) {
        float widened = (float) Math.cbrt(Math.max(1, restlessness));
        float below = below(fit.guess.clampingNm(angleRad), widened * fit.deviationNm(angleRad));
        if (below > EVEN) {
            return Verdict.NOT_REACHED;
        }
        return below > doubt || fit.misfit() > misfitAllowed ? Verdict.UNSURE : Verdict.REACHED;
    }

    private float below(float torqueNm, float deviationNm) {
        return NormalTail.above((torqueNm - lowestNm) / Math.max(1e-3f, deviationNm));
    }
}
