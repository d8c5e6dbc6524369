package org.shutoffbench.controller.strategy;

import java.util.List;
import java.util.Set;
import org.shutoffbench.controller.Channel;
import org.shutoffbench.controller.Command;
import org.shutoffbench.controller.Provision;
import org.shutoffbench.controller.SensorFrame;
import org.shutoffbench.controller.Setting;
import org.shutoffbench.controller.Setting.Role;
import org.shutoffbench.controller.Settings;
import org.shutoffbench.controller.ShutoffStrategy;
import org.shutoffbench.controller.StrategyDescriptor;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Target;
import org.shutoffbench.controller.Verdict;

/**
 * Balances energy blow by blow: a blow's work over its advance is the torque that resisted. A Kalman filter follows that
 * torque over angle; the level before the joint seats is taken for prevailing torque and subtracted; the tool brakes one blow
 * ahead, where the clamping torque now and after the next blow would lie evenly around the target, and says
 * REACHED. Source keys: {@code balance} in docs/strategies.md.
 */
public final class EnergyPerBlow implements ShutoffStrategy {

    private static final StrategyDescriptor DESCRIPTOR = new StrategyDescriptor(
            "energy per blow",
            "stop one blow ahead on torque from each blow's energy and advance, prevailing torque subtracted",
            Set.of(Channel.CARRIER_SPEED, Channel.ANVIL_ANGLE),
            Set.of(Channel.BLOWS),
            List.of(
                    BlowEnergy.AT_REST,
                    BlowEnergy.PER_SPEED,
                    BlowEnergy.TRANSMISSION,
                    SnugSettings.SLOWEST_SEATING,
                    new Setting(
                            "aim",
                            "1",
                            0.5,
                            1.5,
                            1,
                            "clamping torque aimed at over target: corrects a bias",
                            Role.TUNED)),
            List.of("clamping torque [N m]", "snug angle [rad]", "running torque [N m]", "torque rate [N m/rad]"),
            568);

    private final float aim;
    private final BlowSource blows;
    private final BlowEnergy energy;
    private final ClampingTorque clamping;
    private final ShutoffLatch latch = new ShutoffLatch();
    private float aimedNm;

    private EnergyPerBlow(float aim, BlowSource blows, BlowEnergy energy, ClampingTorque clamping) {
        this.aim = aim;
        this.blows = blows;
        this.energy = energy;
        this.clamping = clamping;
    }

    @Override
    public void arm(Target target) {
        latch.arm(target);
        blows.reset();
        energy.reset();
        clamping.reset();
        aimedNm = aim * target.clampingTorqueNm();
    }

    @Override
    public Command onSample(SensorFrame frame) {
        if (latch.isOpen()) {
            boolean reached = blows.update(frame) && isReached();
            if (reached || latch.hasNothingToReach()) {
                latch.shut(Verdict.REACHED);
            }
        }
        return latch.command();
    }

    private boolean isReached() {
        energy.update(blows.carrierSpeedRadPerS());
        clamping.update(blows.beforeRad(), blows.afterRad(), energy.workJ());
        return clamping.isSnug() && clamping.nowNm() + clamping.afterNextBlowNm(energy.workJ()) >= 2 * aimedNm;
    }

    @Override
    public Verdict verdict() {
        return latch.verdict();
    }

    @Override
    public int estimates(float[] into) {
        into[0] = clamping.nowNm();
        into[1] = clamping.snugAngleRad();
        into[2] = clamping.runningTorqueNm();
        into[3] = clamping.rateNmPerRad();
        return 4;
    }

    /** Makes the strategy. */
    public static final class Factory implements StrategyFactory {

        @Override
        public StrategyDescriptor descriptor() {
            return DESCRIPTOR;
        }

        @Override
        public ShutoffStrategy create(Settings settings, Provision provision) {
            provision.demand(DESCRIPTOR);
            BlowEnergy energy = new BlowEnergy(settings);
            return new EnergyPerBlow(
                    settings.get("aim"),
                    BlowSource.of(provision),
                    energy,
                    new ClampingTorque(settings.get(SnugSettings.SLOWEST_SEATING.name())));
        }
    }
}
