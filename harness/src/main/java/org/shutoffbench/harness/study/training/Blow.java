package org.shutoffbench.harness.study.training;

/** One blow past snug of a training joint. */
final class Blow {

    private final float[] features;
    private final double balanceNm;
    private final double middleNm;

    /**
     * @param features as the strategy calculates them
     * @param balanceNm what the energy balance alone says of the middle, N m
     * @param middleNm truth: the middle between clamping torque after this blow and after the next, N m
     */
    Blow(float[] features, double balanceNm, double middleNm) {
        this.features = features.clone();
        this.balanceNm = balanceNm;
        this.middleNm = middleNm;
    }

    float[] features() {
        return features.clone();
    }

    double balanceNm() {
        return balanceNm;
    }

    double middleNm() {
        return middleNm;
    }

    /** The same blow with another truth, for a check that nothing is learned from noise. */
    Blow labelled(double otherMiddleNm) {
        return new Blow(features, balanceNm, otherMiddleNm);
    }
}
