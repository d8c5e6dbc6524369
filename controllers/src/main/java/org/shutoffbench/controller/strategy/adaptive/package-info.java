/**
 * Adaptive estimation: an estimator of the joint that runs in a tool's firmware.
 *
 * <p>Follow one blow through the files: {@code HousingFollower} takes the modelled motion of the housing out of the anvil
 * angle; {@code BlowObserver} turns samples into one {@code Blow}; {@code BlowHistory} keeps the nut's path in bounded
 * memory; {@code JointFit} finds the joint law ({@code JointLawGuess}) that explains it, with {@code JointPrior} and the
 * tool's {@code ToolCalibration}; {@code StopRule} looks one blow ahead; {@code Certainty} makes the verdict of the
 * posterior; {@code AdaptiveEstimation} lets all that happen tick by tick.
 *
 * <p>May touch the contract and the signal room; single precision, nothing allocated after creation.
 */
@NullMarked
package org.shutoffbench.controller.strategy.adaptive;

import org.jspecify.annotations.NullMarked;
