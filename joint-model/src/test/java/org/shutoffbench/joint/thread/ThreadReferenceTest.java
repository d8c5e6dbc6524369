package org.shutoffbench.joint.thread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shutoffbench.validation.Check;
import org.shutoffbench.validation.ReferenceFile;
import org.shutoffbench.validation.ReferenceRow;
import org.shutoffbench.validation.ReferenceSource;

public class ThreadReferenceTest implements ReferenceSource {

    private static final ReferenceFile METRIC = ReferenceFile.read("threads/metric.csv");
    private static final ReferenceFile UNIFIED = ReferenceFile.read("threads/unified.csv");

    @Override
    public List<Check> checks() {
        return Stream.concat(METRIC.checks(this::metric).stream(), UNIFIED.checks(this::unified).stream())
                .toList();
    }

    private double metric(ReferenceRow row) {
        ScrewThread thread = ThreadDesignation.parse(row.text("thread"));
        return row.text("quantity").equals("area") ? thread.stressAreaM2() * 1e6 : thread.pitchDiameterM() * 1e3;
    }

    private double unified(ReferenceRow row) {
        double inch = CustomaryUnits.INCH_M;
        return ThreadDesignation.parse(row.text("thread")).stressAreaM2() / (inch * inch);
    }

    /** The two forms differ by 0.65 to 1.9 % on these threads, well beyond the tolerance of the check above. */
    @Test
    void theMetricFormReadsHighOnEveryInchThread() {
        for (ReferenceRow row : UNIFIED.rows()) {
            ScrewThread inch = ThreadDesignation.parse(row.text("thread"));
            double metricForm =
                    ScrewThread.metric(inch.majorDiameterM(), inch.pitchM()).stressAreaM2();
            assertThat(metricForm / inch.stressAreaM2() - 1).isBetween(0.0065, 0.019);
        }
    }

    /** ISO 68-1: d2 = d - 0.64952 P, d3 = d - 1.22687 P, D1 = d - 1.0825 P as commonly printed. */
    @Test
    void diametersFollowTheBasicProfile() {
        ScrewThread unit = ScrewThread.metric(10, 1);
        assertThat(unit.pitchDiameterM()).isCloseTo(10 - 0.64952, org.assertj.core.api.Assertions.within(5e-6));
        assertThat(unit.minorDiameterM()).isCloseTo(10 - 1.22687, org.assertj.core.api.Assertions.within(5e-6));
        assertThat(unit.nutMinorDiameterM()).isCloseTo(10 - 1.08253, org.assertj.core.api.Assertions.within(5e-6));
    }
}
