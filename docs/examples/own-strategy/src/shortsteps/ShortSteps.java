package shortsteps;

import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/**
 * Brakes when a blow turns the nut by less than a set angle. A blow does about the same work each time, so a short step
 * means a high torque. What it cannot know: whether that torque clamps the joint or only turns a lock nut.
 *
 * <p>Written as for firmware: everything is allocated in the constructor, one tick does a few operations in {@code float}.
 */
final class ShortSteps implements ShutoffStrategy {

    /** The anvil is at rest just before a blow: its angle is the mean over this time. */
    private static final float REST_S = 0.004f;

    private final float shortestStepRad;
    private final float[] recentRad;

    private int next;
    private int filled;
    private float sumRad;
    private float restRad;
    private float stepRad;
    private boolean stopped;
    private boolean nothingToReach;

    ShortSteps(float shortestStepRad, int sampleRateHz) {
        this.shortestStepRad = shortestStepRad;
        this.recentRad = new float[Math.round(REST_S * sampleRateHz)];
    }

    /** Forgets the last joint completely. */
    @Override
    public void arm(Target target) {
        clearRecent();
        restRad = Float.NaN;
        stepRad = Float.NaN;
        stopped = false;
        nothingToReach = target.clampingTorqueNm() == 0;
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (!stopped) {
            if (frame.blows > 0) {
                measureStep();
            }
            remember(frame.anvilAngleRad);
            stopped = nothingToReach || stepRad < shortestStepRad;
        }
        return stopped ? Command.BRAKE : Command.FULL;
    }

    /** The step that ended at this blow's beginning is the one that the blow before it made. */
    private void measureStep() {
        if (filled < recentRad.length) {
            return; // the first samples, or a blow that was reported twice
        }
        float nowRad = sumRad / filled;
        stepRad = nowRad - restRad;
        restRad = nowRad;
        clearRecent();
    }

    private void remember(float angleRad) {
        if (!(Math.abs(angleRad) < 1e6f)) {
            return; // dropped out, or impossible
        }
        if (filled == recentRad.length) {
            sumRad -= recentRad[next];
        } else {
            filled++;
        }
        recentRad[next] = angleRad;
        sumRad += angleRad;
        next = next + 1 == recentRad.length ? 0 : next + 1;
    }

    private void clearRecent() {
        next = 0;
        filled = 0;
        sumRad = 0;
    }

    @Override
    public Verdict verdict() {
        return stopped ? Verdict.REACHED : Verdict.NOT_REACHED;
    }

    @Override
    public int estimates(float[] into) {
        into[0] = stepRad;
        return 1;
    }
}
