package org.shutoffbench.controller.conformance;

import java.util.ArrayList;
import java.util.List;
import org.shutoffbench.controller.StrategyFactory;

/**
 * Checks any strategy against the contract of {@link org.shutoffbench.controller.ShutoffStrategy}.
 *
 * <p>The strategy hears made-up recordings; nothing is said of how well it tightens. A strategy that passes can be run
 * by the harness and could be carried to firmware without surprises.
 */
public final class ConformanceSuite {

    private static final List<Check> CHECKS = List.of(
            ConductCheck.commands(),
            ConductCheck.latching(),
            ConductCheck.verdict(),
            new EstimatesCheck(),
            new ChannelCheck(),
            new RepetitionCheck(),
            new RearmingCheck(),
            new AllocationCheck(),
            new StateSizeCheck(),
            new SurvivalCheck("not a number", Disturbance.NOT_A_NUMBER),
            new SurvivalCheck("saturation", Disturbance.SATURATED_HIGH, Disturbance.SATURATED_LOW),
            new SurvivalCheck("impossible readings", Disturbance.INFINITE, Disturbance.HUGE),
            new SurvivalCheck("drop-outs", Disturbance.DROP_OUTS),
            new SurvivalCheck("stuck sensor", Disturbance.STUCK),
            new NoTargetCheck(),
            new RundownCheck());

    private ConformanceSuite() {}

    /**
     * Examines a strategy.
     *
     * @return one finding per check, in a fixed order; checks that could not be judged say so
     */
    public static List<Finding> examine(StrategyFactory factory) {
        List<Finding> findings = new ArrayList<>();
        Subject subject;
        try {
            subject = new Subject(factory);
        } catch (RuntimeException e) {
            findings.add(Finding.failed(
                    "descriptor", "descriptor() threw " + e, "descriptor() returns a complete StrategyDescriptor."));
            return findings;
        }
        findings.add(examine(new DescriptorCheck(), subject));
        findings.add(examine(new CreationCheck(), subject));
        boolean canBeMade = canBeMade(subject);
        for (Check check : CHECKS) {
            findings.add(
                    canBeMade
                            ? examine(check, subject)
                            : Finding.notJudged(check.name(), "the strategy could not be made with default settings"));
        }
        return findings;
    }

    private static boolean canBeMade(Subject subject) {
        try {
            subject.channelSets().forEach(subject::create);
            return true;
        } catch (RuntimeException e) {
            return false;
        }
    }

    private static Finding examine(Check check, Subject subject) {
        try {
            return check.examine(subject);
        } catch (RuntimeException e) {
            return Finding.failed(check.name(), "threw " + e, "No method of a strategy throws once it is made.");
        }
    }
}
