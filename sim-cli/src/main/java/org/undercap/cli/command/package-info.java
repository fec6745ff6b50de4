/**
 * One class per command. Start with {@link org.undercap.cli.command.RootCommand}, which lists them.
 */
package org.undercap.cli.command;
