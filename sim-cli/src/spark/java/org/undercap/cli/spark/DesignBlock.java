package org.undercap.cli.spark;

import java.io.Serializable;
import java.util.List;

/**
 * Rows of a design on their way to a machine.
 *
 * @param first number of the first run
 * @param lines its line and those of the runs after it
 */
record DesignBlock(long first, List<String> lines) implements Serializable {}
