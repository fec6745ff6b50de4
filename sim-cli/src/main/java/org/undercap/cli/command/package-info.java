/** One class per command. Start with {@link org.undercap.cli.command.RootCommand}. */
package org.undercap.cli.command;
