/**
 * Fits the learned strategy: features and truth of blows on training joints, ridge regression, a check on validation joints, files
 * for scenario and firmware. Sees truth; what it writes holds coefficients only.
 */
@NullMarked
package org.shutoffbench.harness.study.training;

import org.jspecify.annotations.NullMarked;
