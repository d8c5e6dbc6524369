package org.shutoffbench.validation;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * One published value and ours.
 *
 * @param topic heading it goes under
 * @param what the quantity, in words
 * @param unit unit of both values; empty for a pure number
 * @param printed the published value as printed
 * @param ours what the code computes
 * @param tolerance how far they may differ
 * @param source key and place in the source; "memory" where the source was not read
 */
public record Check(
        String topic, String what, String unit, String printed, double ours, Tolerance tolerance, String source) {

    public double published() {
        return Double.parseDouble(printed);
    }

    public boolean holds() {
        return tolerance.holds(published(), ours);
    }

    /** Fails with both values where they differ by more than the tolerance. */
    public void verify() {
        assertThat(holds())
                .as(
                        "%s: published %s %s, ours %s, tolerance %s, source %s",
                        what, printed, unit, ours, tolerance.text(), source)
                .isTrue();
    }
}
