/**
 * Claims: from a sentence in a brochure to a decision. A claim file says what is promised; a plan says what would have to be
 * tried; a trial tries it on simulated joints; a judgement holds measured joints against it.
 *
 * <p>May touch scenario, population, run, statistics and the page templates of report. Simulated joints never enter the
 * verdict on measured ones unless a weight is given.
 */
@NullMarked
package org.shutoffbench.harness.claim;

import org.jspecify.annotations.NullMarked;
