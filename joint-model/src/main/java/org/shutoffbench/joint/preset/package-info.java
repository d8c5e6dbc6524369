/**
 * Ready descriptions of populations, named after what they are: how a surface rubs, and what state a joint is in.
 *
 * <p>Descriptions only, nothing is drawn here. Each number has a source or says assumed; docs/populations.md lists them.
 */
@NullMarked
package org.shutoffbench.joint.preset;

import org.jspecify.annotations.NullMarked;
