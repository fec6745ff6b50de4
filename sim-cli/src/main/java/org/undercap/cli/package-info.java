/**
 * The command line {@code undercap}: reads scenario files, runs the library, and writes tables,
 * charts and reports.
 *
 * <p>Start with {@link org.undercap.cli.Main}, which sets up the streams and the error messages.
 * The commands themselves live in {@link org.undercap.cli.command}.
 */
package org.undercap.cli;
