/**
 * The impact tool: motor, cam, hammer, socket and housing as immutable parameter records in SI units.
 */
@NullMarked
package org.shutoffbench.tool;

import org.jspecify.annotations.NullMarked;
