/**
 * The contract between a tool's electronics and a shutoff strategy.
 *
 * <p>Written as firmware would be: no clock, no random numbers, no streams, no threads, no mutable statics, no allocation
 * in a tick, float arithmetic. Knows nothing of joints, plants or the harness.
 */
@NullMarked
package org.shutoffbench.controller;

import org.jspecify.annotations.NullMarked;
