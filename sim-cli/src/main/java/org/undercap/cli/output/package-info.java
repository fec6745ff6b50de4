/**
 * How the command line speaks: tables and pages for people, JSON and CSV for programs, files in a
 * folder, exit codes, and the failures that it knows how to explain.
 *
 * <p>Start with {@link org.undercap.cli.output.TextPage} for what people read, {@link
 * org.undercap.cli.output.JsonOutput} for what programs read, and {@link
 * org.undercap.cli.output.OutputFolder} for files.
 */
package org.undercap.cli.output;
