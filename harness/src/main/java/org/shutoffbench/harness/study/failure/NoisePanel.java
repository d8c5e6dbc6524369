package org.shutoffbench.harness.study.failure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shutoffbench.harness.population.Population;
import org.shutoffbench.harness.statistics.LimitState;
import org.shutoffbench.harness.statistics.NormalPoint;

/**
 * A failure under several fixed noises: the margin is the median, so a joint fails where it fails under most of them. With one
 * noise a fluke of it can make a nearly mild joint fail; with more, the joint has to be at fault.
 */
final class NoisePanel implements LimitState {

    private final LimitState limitState;
    private final long[] keys;

    /**
     * The noises of the first joints of a family.
     *
     * @param noises an odd number
     */
    NoisePanel(LimitState limitState, Population population, int family, int noises) {
        if (noises < 1 || noises % 2 == 0) {
            throw new IllegalArgumentException("an odd number of noises has a majority, not " + noises);
        }
        this.limitState = limitState;
        this.keys = new long[noises];
        Arrays.setAll(keys, joint -> population.keyed(family, joint).noiseKey());
    }

    @Override
    public double[] margins(List<NormalPoint> points) {
        List<NormalPoint> all = new ArrayList<>(points.size() * keys.length);
        for (NormalPoint point : points) {
            for (long key : keys) {
                all.add(point.withNoise(key));
            }
        }
        double[] each = limitState.margins(all);
        double[] medians = new double[points.size()];
        for (int i = 0; i < medians.length; i++) {
            double[] ofPoint = Arrays.copyOfRange(each, i * keys.length, (i + 1) * keys.length);
            Arrays.sort(ofPoint);
            medians[i] = ofPoint[keys.length / 2];
        }
        return medians;
    }

    /** The joint number whose noise makes a point fail, the first one. */
    int failingJoint(NormalPoint point) {
        for (int joint = 0; joint < keys.length; joint++) {
            if (limitState.margins(List.of(point.withNoise(keys[joint])))[0] <= 0) {
                return joint;
            }
        }
        throw new IllegalStateException("the point fails under none of the noises");
    }

    long key(int joint) {
        return keys[joint];
    }

    int noises() {
        return keys.length;
    }
}
