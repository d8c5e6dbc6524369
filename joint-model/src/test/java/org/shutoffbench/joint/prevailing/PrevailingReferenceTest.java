package org.shutoffbench.joint.prevailing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shutoffbench.joint.thread.CustomaryUnits;
import org.shutoffbench.joint.thread.MetricSize;
import org.shutoffbench.joint.thread.UnifiedSize;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ReferenceFile;
import org.shutoffbench.validation.ReferenceRow;
import org.shutoffbench.validation.ReferenceSource;

public class PrevailingReferenceTest implements ReferenceSource {

    @Override
    public List<Check> checks() {
        return Stream.concat(
                        ReferenceFile.read("prevailing/minimum.csv").checks(this::inch).stream(),
                        ReferenceFile.read("prevailing/metric.csv").checks(this::metric).stream())
                .toList();
    }

    private double inch(ReferenceRow row) {
        UnifiedPrevailing nut = UnifiedPrevailing.of(UnifiedSize.valueOf(row.text("size")));
        boolean fine = row.text("series").equals("fine");
        double torqueNm = row.text("quantity").equals("reused")
                ? nut.reusedLowestNm(fine)
                : nut.used(fine).lowestNm();
        return torqueNm / CustomaryUnits.INCH_POUND_NM;
    }

    private double metric(ReferenceRow row) {
        PrevailingRange range =
                MetricPrevailing.of(MetricSize.valueOf(row.text("size"))).firstUse();
        return row.text("quantity").equals("most") ? range.highestNm() : range.lowestNm();
    }

    /** TB 43-0218: the running torque is added where it is at least a third of the target. */
    @Test
    void runningTorqueIsAddedFromAThirdOfTheTargetOn() {
        assertThat(RunningTorqueRule.setTorqueNm(30, 9.99)).isEqualTo(30);
        assertThat(RunningTorqueRule.setTorqueNm(30, 10)).isEqualTo(40);
        assertThat(RunningTorqueRule.setTorqueNm(30, 14)).isEqualTo(44);
    }
}
