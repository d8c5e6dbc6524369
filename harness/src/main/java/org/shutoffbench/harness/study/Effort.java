package org.shutoffbench.harness.study;

import java.util.List;

/**
 * What a strategy spent.
 *
 * @param meanBlows mean number of blows, spin-up and run-on included
 * @param blowPoints 0, 5, 25, 50, 75, 95 and 100 % points of the number of blows
 * @param meanTimeS mean time to the stop command, s
 * @param timePoints 0, 5, 25, 50, 75, 95 and 100 % points of that time, s
 * @param meanRunOnDeg mean nut angle from the stop command to judgement, deg
 */
public record Effort(
        Estimate meanBlows,
        List<QuantitySummary.Point> blowPoints,
        Estimate meanTimeS,
        List<QuantitySummary.Point> timePoints,
        Estimate meanRunOnDeg) {

    public Effort {
        blowPoints = List.copyOf(blowPoints);
        timePoints = List.copyOf(timePoints);
    }
}
