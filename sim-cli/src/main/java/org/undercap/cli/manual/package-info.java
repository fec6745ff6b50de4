/**
 * Man pages and the scripts by which shells complete words, made from the same description of
 * commands and options as the help. Start with {@link org.undercap.cli.manual.ManPage}.
 */
package org.undercap.cli.manual;
