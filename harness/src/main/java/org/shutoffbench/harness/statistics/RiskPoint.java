package org.shutoffbench.harness.statistics;

/**
 * A point that an operating characteristic must respect.
 *
 * @param failing share of all joints that fail, in (0, 1)
 * @param risk greatest probability of the wrong decision there, in (0, 1)
 */
public record RiskPoint(double failing, double risk) {

    public RiskPoint {
        Levels.probability(failing, "failing share");
        Levels.probability(risk, "risk");
    }
}
