package org.shutoffbench.controller.strategy;

import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.signal.BlowChannel;
import org.shutoffbench.controller.signal.BlowSteps;
import org.shutoffbench.controller.signal.DipDetector;
import org.shutoffbench.controller.signal.FirstOrderLowPass;

/**
 * Blows with the anvil's rest before and after and the carrier's speed: from the blow detector where the tool has one, else
 * from dips of the carrier's speed.
 */
final class BlowSource {

    /** A dip takes a quarter of the speed; noise and the ripple of a rundown stay below a twelfth. */
    private static final float LEAST_DIP = 0.1f;

    private static final float SPEED_CUTOFF_HZ = 200;

    private final boolean hasBlowChannel;
    private final DipDetector dips;
    private final BlowSteps steps;
    private final FirstOrderLowPass speed;
    private float speedAtBlowRadPerS;

    private BlowSource(boolean hasBlowChannel, Provision provision) {
        int rate = provision.sampleRateHz();
        this.hasBlowChannel = hasBlowChannel;
        this.dips = new DipDetector(LEAST_DIP, rate);
        this.steps = hasBlowChannel ? BlowSteps.fromContacts(rate) : BlowSteps.fromDips(rate);
        this.speed = new FirstOrderLowPass(SPEED_CUTOFF_HZ, provision.periodS());
    }

    static BlowSource of(Provision provision) {
        return new BlowSource(provision.channels().contains(Channel.BLOWS), provision);
    }

    void reset() {
        dips.reset();
        steps.reset();
        speed.reset();
        speedAtBlowRadPerS = Float.NaN;
    }

    /** Takes a sample; true where the step of a blow has just been measured. */
    boolean update(SensorFrame frame) {
        boolean blow;
        if (hasBlowChannel) {
            speed.update(frame.carrierSpeedRadPerS);
            blow = BlowChannel.plausible(frame.blows) > 0;
            speedAtBlowRadPerS = blow ? speed.output() : speedAtBlowRadPerS;
        } else {
            blow = dips.update(frame.carrierSpeedRadPerS);
            speedAtBlowRadPerS = blow ? dips.speedBeforeRadPerS() : speedAtBlowRadPerS;
        }
        return steps.update(frame.anvilAngleRad, blow);
    }

    /** Carrier speed just before the last blow, rad/s; NaN where unknown. */
    float carrierSpeedRadPerS() {
        return speedAtBlowRadPerS;
    }

    /** Anvil angle at rest before the last measured blow, rad. */
    float beforeRad() {
        return steps.beforeRad();
    }

    /** Anvil angle at rest after the last measured blow, rad. */
    float afterRad() {
        return steps.afterRad();
    }
}
