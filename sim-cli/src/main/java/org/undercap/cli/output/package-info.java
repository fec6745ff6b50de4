/**
 * How the command line speaks: exit codes, the program's version, and the failures that it knows
 * how to explain. Start with {@link org.undercap.cli.output.ExitCodes}.
 */
package org.undercap.cli.output;
