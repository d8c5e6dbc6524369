package org.shutoffbench.controller.conformance;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
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
        examine(factory, findings::add);
        return findings;
    }

    /**
     * Examines a strategy and tells each finding as soon as it is made, in the same order.
     *
     * @param findings hears them; what came before a check that never ends is known
     */
    public static void examine(StrategyFactory factory, Consumer<Finding> findings) {
        Subject subject;
        try {
            subject = new Subject(factory);
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
            findings.accept(undescribed("descriptor() threw " + Thrown.inWords(e)));
            return;
        }
        if (subject.descriptor == null) {
            findings.accept(undescribed("descriptor() returned nothing"));
            return;
        }
        findings.accept(examine(new DescriptorCheck(), subject));
        findings.accept(examine(new CreationCheck(), subject));
        boolean canBeMade = canBeMade(subject);
        for (Check check : CHECKS) {
            findings.accept(
                    canBeMade
                            ? examine(check, subject)
                            : Finding.notJudged(check.name(), "the strategy could not be made with default settings"));
        }
    }

    private static Finding undescribed(String found) {
        return Finding.failed("descriptor", found, "descriptor() returns a complete StrategyDescriptor.");
    }

    private static boolean canBeMade(Subject subject) {
        try {
            return subject.channelSets().stream().map(subject::create).allMatch(Objects::nonNull);
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
            return false;
        }
    }

    private static Finding examine(Check check, Subject subject) {
        try {
            return check.examine(subject);
        } catch (RuntimeException | AssertionError | LinkageError | StackOverflowError e) {
            return Finding.failed(
                    check.name(), "threw " + Thrown.inWords(e), "No method of a strategy throws once it is made.");
        }
    }
}
