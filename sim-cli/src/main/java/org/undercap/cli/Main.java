package org.undercap.cli;

import org.undercap.cli.command.RootCommand;
import picocli.CommandLine;

/** Starts the command line. */
public final class Main {
  private Main() {}

  /**
   * Runs the command that the arguments name.
   *
   * @param args the words after {@code undercap}
   */
  public static void main(String[] args) {
    System.exit(new CommandLine(new RootCommand()).execute(args));
  }
}
