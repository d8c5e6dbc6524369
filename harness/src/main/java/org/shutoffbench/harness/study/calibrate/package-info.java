/**
 * Calibration of a tool: energy of a blow against carrier speed, share of it that turns the nut, energy of a run-down, and
 * what a last blow at reduced drive does.
 *
 * <p>Strikes plain joints of its own with the nominal tool and looks at the truth; joints that are judged play no part. May
 * touch the rooms of joint-model and {@code record}.
 */
@NullMarked
package org.shutoffbench.harness.study.calibrate;

import org.jspecify.annotations.NullMarked;
