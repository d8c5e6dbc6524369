/**
 * Published values beside ours: reference files, the checks they make, and the table of docs/validation.md.
 *
 * <p>Test code of joint-model that the tests of other modules may use too. To add rows: put a file under {@code
 * reference/<topic>/}, let a test class implement {@link org.shutoffbench.validation.ReferenceSource}, and name it in
 * {@code META-INF/services/org.shutoffbench.validation.ReferenceSource}.
 */
@NullMarked
package org.shutoffbench.validation;

import org.jspecify.annotations.NullMarked;
