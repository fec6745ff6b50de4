/**
 * Designs of many runs: start with {@link org.undercap.cli.batch.BatchWork}, which runs the blocks
 * of a design on several threads and gives their rows in the order of the design. {@link
 * org.undercap.cli.batch.BatchTables} says what the rows hold.
 */
package org.undercap.cli.batch;
