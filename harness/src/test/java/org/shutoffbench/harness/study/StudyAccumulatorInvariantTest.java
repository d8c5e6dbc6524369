package org.shutoffbench.harness.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StudyAccumulatorInvariantTest {

    /** 600 joints keep all values; 9000 go beyond the values kept and into classes. */
    @ParameterizedTest
    @ValueSource(ints = {600, 9000})
    void orderAndSplitNeverChangeAByte(int joints) {
        StudyPlan plan = InventedStudy.plan(joints, 30);
        String inOrder =
                SummaryFile.text(InventedStudy.accumulated(plan, 0, joints).summarise(InventedStudy.FINISHED));
        assertThat(SummaryFile.text(shuffledInThreeParts(plan, joints))).isEqualTo(inOrder);
    }

    private static StudySummary shuffledInThreeParts(StudyPlan plan, int joints) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < 2 * joints; i++) {
            order.add(i);
        }
        Collections.shuffle(order, new Random(5));
        List<StudyAccumulator> parts =
                List.of(new StudyAccumulator(plan), new StudyAccumulator(plan), new StudyAccumulator(plan));
        for (int i = 0; i < order.size(); i++) {
            int joint = order.get(i) / 2;
            parts.get(i * i % 3)
                    .addJoint(
                            InventedStudy.joint(plan, order.get(i) % 2, joint),
                            InventedStudy.prevailingTorqueNm(joint));
        }
        StudyAccumulator whole = parts.get(2);
        whole.merge(parts.get(0));
        whole.merge(parts.get(1));
        return whole.summarise(InventedStudy.FINISHED);
    }

    @Test
    void theOrderOfStrategiesWithinAJointDoesNotMatter() {
        StudyPlan plan = InventedStudy.plan(60, 60);
        StudyAccumulator turned = new StudyAccumulator(plan);
        for (int family = 0; family < 2; family++) {
            for (int joint = 0; joint < 60; joint++) {
                var tightenings = new ArrayList<>(InventedStudy.joint(plan, family, joint));
                Collections.reverse(tightenings);
                turned.addJoint(tightenings, InventedStudy.prevailingTorqueNm(joint));
            }
        }
        assertThat(turned.summarise(InventedStudy.FINISHED)).isEqualTo(InventedStudy.summary(60));
    }

    @Test
    void aSummarySurvivesItsFile() {
        StudySummary summary = InventedStudy.summary(200);
        assertThat(SummaryFile.parse(SummaryFile.text(summary))).isEqualTo(summary);
    }

    @Test
    void aJointAddedTwiceIsNoticed() {
        StudyPlan plan = InventedStudy.plan(60, 60);
        StudyAccumulator study = InventedStudy.accumulated(plan, 0, 10);
        assertThatThrownBy(() -> study.addJoint(InventedStudy.joint(plan, 0, 3), 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("joint 3");
    }

    @Test
    void jointsMustNotBeMixed() {
        StudyPlan plan = InventedStudy.plan(60, 60);
        StudyAccumulator study = new StudyAccumulator(plan);
        assertThatThrownBy(() -> study.addJoint(List.of(
                        InventedStudy.joint(plan, 0, 3).get(0),
                        InventedStudy.joint(plan, 0, 4).get(1))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aStrategyMustNotComeTwice() {
        StudyPlan plan = InventedStudy.plan(60, 60);
        var once = InventedStudy.joint(plan, 0, 3).get(0);
        StudyAccumulator study = new StudyAccumulator(plan);
        assertThatThrownBy(() -> study.addJoint(List.of(once, once))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void unlikePlansDoNotMerge() {
        StudyAccumulator study = new StudyAccumulator(InventedStudy.plan(60, 60));
        assertThatThrownBy(() -> study.merge(new StudyAccumulator(InventedStudy.plan(61, 61))))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
