package org.shutoffbench.controller.conformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.shutoffbench.controller.StrategyFactory;
import org.shutoffbench.controller.Verdict;
import org.shutoffbench.controller.conformance.Finding.Result;

class ConformanceSuiteTest {

    @Test
    void anExemplaryStrategyPassesEveryCheck() {
        assertThat(ConformanceSuite.examine(new Exemplary.Factory())).allMatch(Finding::passed);
    }

    @ParameterizedTest(name = "{0} is caught by \"{1}\"")
    @MethodSource("misbehaving")
    void eachMisbehaviourIsCaughtByItsOwnCheckAlone(StrategyFactory factory, String check) {
        List<Finding> findings = ConformanceSuite.examine(factory);
        assertThat(findings)
                .filteredOn(finding -> finding.result() == Result.FAILED)
                .extracting(Finding::check)
                .containsExactly(check);
        assertThat(findings)
                .filteredOn(finding -> !finding.passed())
                .allMatch(finding ->
                        !finding.found().isBlank() && !finding.remedy().isBlank());
    }

    static List<Arguments> misbehaving() {
        return List.of(
                Arguments.of(new Misbehaving.NamedInCapitals(), "descriptor"),
                Arguments.of(new Misbehaving.NoFiniteRange(), "descriptor"),
                Arguments.of(new Misbehaving.AcceptsAnyTool(), "creation"),
                Arguments.of(new Misbehaving.MakesNothing(), "creation"),
                Arguments.of(new Misbehaving.AnswersNothing(), "commands"),
                Arguments.of(new Misbehaving.DrivesAgain(), "shutoff latches"),
                Arguments.of(new Misbehaving.SpeaksEarly(), "verdict waits for the stop"),
                Arguments.of(new Misbehaving.EstimatesMore(), "estimates"),
                Arguments.of(new Misbehaving.ReadsUndeclaredTorque(), "declared channels only"),
                Arguments.of(new Misbehaving.SharesState(), "deterministic"),
                Arguments.of(new Misbehaving.RemembersTheLastJoint(), "re-armable"),
                Arguments.of(new Misbehaving.Allocates(), "no allocation"),
                Arguments.of(new Misbehaving.UnderstatesItsState(), "state bytes"),
                Arguments.of(new Misbehaving.HoldsALibraryObject(), "state bytes"),
                Arguments.of(new Misbehaving.GrowsWhenArmed(), "state bytes"),
                Arguments.of(new Misbehaving.ClaimsBlind(), "not a number"),
                Arguments.of(new Misbehaving.TrustsTheScale(), "saturation"),
                Arguments.of(new Misbehaving.TrustsFiniteness(), "impossible readings"),
                Arguments.of(new Misbehaving.TripsOverDropOuts(), "drop-outs"),
                Arguments.of(new Misbehaving.DividesByTheChange(), "stuck sensor"),
                Arguments.of(new Misbehaving.DrivesForNothing(), "target of 0"),
                Arguments.of(new Misbehaving.RunsOutOfRoom(), "endless rundown"));
    }

    @Test
    void aStrategyThatCannotBeMadeLeavesTheRestUnjudged() {
        List<Finding> findings = ConformanceSuite.examine(new Unmakeable());
        assertThat(findings)
                .filteredOn(finding -> finding.result() == Result.FAILED)
                .extracting(Finding::check)
                .containsExactly("creation");
        assertThat(findings)
                .filteredOn(finding -> finding.result() == Result.NOT_JUDGED)
                .hasSize(findings.size() - 2);
    }

    @Test
    void aDescriptorThatThrowsIsTheOnlyFinding() {
        assertThat(ConformanceSuite.examine(new Undescribed()))
                .singleElement()
                .satisfies(finding -> assertThat(finding.found()).contains("not today"));
    }

    @Test
    void nothingInPlaceOfADescriptorIsTheOnlyFinding() {
        assertThat(ConformanceSuite.examine(new DescribedByNothing()))
                .singleElement()
                .satisfies(finding -> assertThat(finding.found()).isEqualTo("descriptor() returned nothing"));
    }

    @Test
    void anErrorIsAFindingThatNamesMethodAndLine() {
        assertThat(ConformanceSuite.examine(new FailsAnAssertion()))
                .filteredOn(finding -> finding.check().equals("commands"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.found())
                        .contains("verdict() threw java.lang.AssertionError: loose (ConformanceSuiteTest.java:"));
    }

    public static final class DescribedByNothing extends Exemplary.Factory {
        @Override
        public org.shutoffbench.controller.StrategyDescriptor descriptor() {
            return null;
        }
    }

    public static final class FailsAnAssertion extends Exemplary.Factory {
        @Override
        protected Exemplary make() {
            return new Exemplary() {
                @Override
                public Verdict verdict() {
                    if (stopped) {
                        throw new AssertionError("loose");
                    }
                    return super.verdict();
                }
            };
        }
    }

    public static final class Unmakeable extends Exemplary.Factory {
        @Override
        protected Exemplary make() {
            throw new IllegalStateException("not today");
        }
    }

    public static final class Undescribed extends Exemplary.Factory {
        @Override
        public org.shutoffbench.controller.StrategyDescriptor descriptor() {
            throw new IllegalStateException("not today");
        }
    }
}
