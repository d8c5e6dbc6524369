package org.shutoffbench.harness.visits;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.shutoffbench.harness.audit.Share;
import org.shutoffbench.harness.scenario.Grouping;

/**
 * Success-run numbers at 95 % one-sided confidence, n = ln 0.05 / ln(1 - p): 299, 1109, 2995 (published in handbooks of
 * reliability testing as zero-failure sample sizes; here from memory, and by the formula). A one-sided 95 % bound is the upper
 * end of a two-sided interval of 90 %.
 */
class CleanJointsReferenceTest {

    private static final double TWO_SIDED = 0.90;

    private static Share seen(int missed, int joints) {
        Share share = Share.counting(Grouping.NONE);
        IntStream.range(0, joints).forEach(i -> share.add(i < missed, i, i));
        return share;
    }

    @Test
    void noneSeenYetAsksForTheSuccessRunNumbers() {
        assertThat(CleanJoints.needed(seen(0, 0), 0.01, TWO_SIDED)).isEqualTo(299);
        assertThat(CleanJoints.needed(seen(0, 0), 0.0027, TWO_SIDED)).isEqualTo(1109);
        assertThat(CleanJoints.needed(seen(0, 0), 0.001, TWO_SIDED)).isEqualTo(2995);
    }

    @Test
    void cleanJointsSeenCountTowardsThem() {
        assertThat(CleanJoints.needed(seen(0, 100), 0.01, TWO_SIDED)).isEqualTo(199);
        assertThat(CleanJoints.needed(seen(0, 299), 0.01, TWO_SIDED)).isZero();
    }

    /** One failure: 473 joints for 1 % (published with the numbers above, from memory; binomial: 0.99^n + n 0.01 0.99^(n-1)). */
    @Test
    void aMissSeenAsksForMore() {
        assertThat(CleanJoints.needed(seen(1, 1), 0.01, TWO_SIDED)).isEqualTo(472);
    }

    @Test
    void aLimitOfNothingIsNeverReached() {
        assertThat(CleanJoints.needed(seen(0, 100), 0, TWO_SIDED)).isEqualTo(CleanJoints.MOST);
    }

    @Test
    void joinedLotsCountForLess() {
        Share clustered = Share.counting(new Grouping(25, 1, 25));
        IntStream.range(0, 40 * 25).forEach(i -> clustered.add(false, i / 25, i / 25));
        assertThat(CleanJoints.needed(clustered, 0.01, TWO_SIDED))
                .isGreaterThan(CleanJoints.needed(seen(0, 1000), 0.01, TWO_SIDED));
    }
}
