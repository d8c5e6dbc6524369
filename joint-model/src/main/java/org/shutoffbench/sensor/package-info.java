/**
 * From plant quantity to what the tool's electronics read: rate, latency, bandwidth, resolution, range, offset, gain,
 * noise and drop-outs.
 *
 * <p>Sensors see the plant, never the joint's parameters.
 */
@NullMarked
package org.shutoffbench.sensor;

import org.jspecify.annotations.NullMarked;
