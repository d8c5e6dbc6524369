/**
 * One visit or two: what it costs to have every joint audited by hand, a sample, or none, what each leaves low, and whether
 * leaving out the audit can be defended. Reads audits that are counted already. Equations: docs/visits.md.
 */
@NullMarked
package org.shutoffbench.harness.visits;

import org.jspecify.annotations.NullMarked;
