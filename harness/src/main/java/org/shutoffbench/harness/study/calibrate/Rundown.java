package org.shutoffbench.harness.study.calibrate;

/**
 * A free run-down into snug.
 *
 * @param highestSpeedRadPerS highest carrier speed, smoothed over 1.5 ms
 * @param energyJ work that turned the nut from snug to its first rest
 */
record Rundown(double highestSpeedRadPerS, double energyJ) {}
