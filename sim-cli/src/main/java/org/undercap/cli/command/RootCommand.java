package org.undercap.cli.command;

import picocli.CommandLine.Command;

/** The command {@code undercap} itself. */
@Command(name = "undercap", mixinStandardHelpOptions = true)
public final class RootCommand {
  /** Creates the command. */
  public RootCommand() {}
}
