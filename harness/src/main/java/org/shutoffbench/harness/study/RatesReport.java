package org.shutoffbench.harness.study;

import org.shutoffbench.harness.statistics.ClusterInterval;
import org.shutoffbench.harness.statistics.Interval;

/** Turns the counts of a cell into rates: by cluster where joints share lots or tools, the widest interval then. */
final class RatesReport {

    private RatesReport() {}

    static Rates summarise(CellAccumulator cell, Methods methods) {
        return new Rates(
                rate(cell, Event.IN_WINDOW, methods),
                rate(cell, Event.SILENT_MISS, methods),
                rate(cell, Event.FALSE_STOP, methods),
                rate(cell, Event.FALSE_ALARM, methods),
                rate(cell, Event.UNDECIDED, methods),
                rate(cell, Event.UNSEATED, methods),
                rate(cell, Event.LOW, methods),
                rate(cell, Event.HIGH, methods),
                rate(cell, Event.YIELDED, methods),
                rate(cell, Event.FRACTURED, methods),
                rate(cell, Event.REACHED, methods));
    }

    static Rate rate(CellAccumulator cell, Event event, Methods methods) {
        Rate widest = Rate.ofIndependent(cell.count(event), cell.run(), methods);
        for (ClusterTally tally : cell.clusters()) {
            ClusterInterval clustered = tally.rate(event, methods.confidence());
            Interval interval = clustered.interval();
            if (!widest.kind().startsWith("by ") || interval.width() > widest.high() - widest.low()) {
                widest = new Rate(
                        widest.count(),
                        widest.n(),
                        widest.estimate(),
                        interval.low(),
                        interval.high(),
                        tally.title(),
                        clustered.designEffect());
            }
        }
        return widest;
    }
}
