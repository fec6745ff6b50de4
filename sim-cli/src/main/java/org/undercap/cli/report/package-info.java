/**
 * What is made of results: pages of text, tables, files and the words and data of charts. Start
 * with {@link org.undercap.cli.report.ComparisonPage} for the terminal and {@link
 * org.undercap.cli.report.ComparisonFiles} for files. Nothing here runs the model.
 */
package org.undercap.cli.report;
