/** The command line {@code undercap}. Start with {@link org.undercap.cli.Main}. */
package org.undercap.cli;
