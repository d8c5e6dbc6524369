package org.shutoffbench.harness.study.calibrate;

/**
 * A last blow at reduced drive, struck on a copy.
 *
 * @param meanSpeedRadPerS mean carrier speed between the blows before
 * @param driveLevel commanded 6 ms after the contact before it
 * @param share its advance over that of a full blow
 */
record TrimmedBlow(double meanSpeedRadPerS, double driveLevel, double share) {}
