package org.shutoffbench.controller.strategy.adaptive;

import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/** Makes the verdict of the posterior: how probable is it that the joint ended below its window? */
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

    Verdict verdict(JointFit fit, float angleRad) {
        float below = below(fit.guess.clampingNm(angleRad), fit.deviationNm(angleRad));
        if (below > EVEN) {
            return Verdict.NOT_REACHED;
        }
        return below > doubt || fit.misfit() > misfitAllowed ? Verdict.UNSURE : Verdict.REACHED;
    }

    private float below(float torqueNm, float deviationNm) {
        return NormalTail.above((torqueNm - lowestNm) / Math.max(1e-3f, deviationNm));
    }
}
