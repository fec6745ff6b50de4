package org.undercap.cli.command;

import org.undercap.cli.output.ProgramVersion;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints: one line with name and version. */
final class VersionProvider implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"undercap " + ProgramVersion.text()};
  }
}
