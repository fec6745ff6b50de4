/**
 * Many runs that differ in what a researcher chose: start with {@link
 * org.undercap.batch.BatchBlock}.
 *
 * <p>A {@link org.undercap.batch.BatchRow} is a run, a {@link org.undercap.batch.BatchResult} what
 * came of it. Runs that may stand side by side are run as the lanes of one block; the result of a
 * run does not depend on the others.
 */
package org.undercap.batch;
