package org.shutoffbench.joint.prevailing;

/**
 * Prevailing torque that a standard allows a nut of one size.
 *
 * @param highestNm most on first assembly, N m
 * @param lowestNm least on first removal, or on reuse where the source is about used nuts, N m
 * @param sourceKey key into docs/references.md
 */
public record PrevailingRange(double highestNm, double lowestNm, String sourceKey) {

    public PrevailingRange {
        if (!(lowestNm > 0 && lowestNm < highestNm && highestNm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a prevailing torque range must rise from above 0");
        }
    }

    public double middleNm() {
        return (lowestNm + highestNm) / 2;
    }
}
