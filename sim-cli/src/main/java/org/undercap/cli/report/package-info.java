/**
 * What is made of results: pages, tables, files and the words and data of charts. Start with {@link
 * org.undercap.cli.report.AnswerWords}, which says all that is said about an answer; {@link
 * org.undercap.cli.report.Report} is what it makes, the same for text, web page and Markdown.
 * {@link org.undercap.cli.report.AnswerPage} is for the terminal, {@link
 * org.undercap.cli.report.AnswerFiles} for files. Nothing here runs the model.
 */
package org.undercap.cli.report;
