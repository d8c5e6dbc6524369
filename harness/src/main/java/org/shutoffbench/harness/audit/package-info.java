/**
 * The second visit: somebody checks the residual torque of a tightened joint by hand. The audit feels the same joint that the
 * tool tightened, friction, prevailing torque and all, so that what fools the tool can fool the auditor. Reads the population
 * and the records of a run; moves no plant. Equations, sources and assumptions: docs/audit.md.
 */
@NullMarked
package org.shutoffbench.harness.audit;

import org.jspecify.annotations.NullMarked;
