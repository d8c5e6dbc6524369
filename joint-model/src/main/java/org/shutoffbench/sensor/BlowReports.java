package org.shutoffbench.sensor;

import org.shutoffbench.draw.NoiseStream;
import org.shutoffbench.plant.Plant;
import org.shutoffbench.plant.PlantState;

/** The blow detector in a run: which blows it reports, and when. Everything about a blow is keyed by its number. */
final class BlowReports {

    /** Reports under way; with the limits of {@link BlowDetector} enough for 100 blows a second, all doubled. */
    private static final int CAPACITY = 64;

    private static final double NS = 1e-9;

    private final BlowDetector detector;
    private final double[] dueS = new double[CAPACITY];

    private int pending;
    private int seen;
    private long shareKey;
    private long delayKey;

    BlowReports(BlowDetector detector) {
        this.detector = detector;
    }

    void start(long shares, long delays) {
        pending = 0;
        seen = 0;
        shareKey = shares;
        delayKey = delays;
    }

    /** Takes note of a blow that the plant has had since the last look. */
    void notice(Plant plant) {
        if (plant.blows() != seen) {
            notice(plant.state());
        }
    }

    void notice(PlantState state) {
        seen = state.blows;
        if (state.lastBlowHammerSpeedRadPerS < detector.leastHammerSpeedRadPerS()) {
            return;
        }
        double share = NoiseStream.uniform(shareKey, seen);
        if (share < detector.missedShare()) {
            return;
        }
        double delayS = detector.latencyNs() * NS + detector.jitterS() * Math.abs(NoiseStream.normal(delayKey, seen));
        add(state.lastBlowTimeS + delayS);
        if (share >= 1 - detector.doubledShare()) {
            add(state.lastBlowTimeS + delayS + detector.doubledAfterNs() * NS);
        }
    }

    private void add(double timeS) {
        if (pending < CAPACITY) {
            dueS[pending] = timeS;
            pending++;
        }
    }

    /** Hands out the reports that are due by a time. */
    int due(double timeS) {
        int count = 0;
        for (int i = pending - 1; i >= 0; i--) {
            if (dueS[i] <= timeS) {
                pending--;
                dueS[i] = dueS[pending];
                count++;
            }
        }
        return count;
    }

    void copyFrom(BlowReports other) {
        pending = other.pending;
        seen = other.seen;
        shareKey = other.shareKey;
        delayKey = other.delayKey;
        System.arraycopy(other.dueS, 0, dueS, 0, CAPACITY);
    }
}
