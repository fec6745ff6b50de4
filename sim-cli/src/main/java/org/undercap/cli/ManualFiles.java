package org.undercap.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.undercap.cli.command.RootCommand;
import org.undercap.cli.manual.Completion;
import org.undercap.cli.manual.ManPage;
import picocli.CommandLine;

/** Writes the man pages and the scripts for shells that are handed out with the program. */
public final class ManualFiles {
  private ManualFiles() {}

  /**
   * Writes the files; called by the build.
   *
   * @param args the folder to write them to
   * @throws IOException if they cannot be written
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    CommandLine line = new CommandLine(new RootCommand());
    RootCommand.addCommands(line);
    for (Map.Entry<String, String> page : ManPage.all(line).entrySet()) {
      write(folder.resolve("man").resolve("man1").resolve(page.getKey() + ".1"), page.getValue());
    }
    Path scripts = folder.resolve("completion");
    write(scripts.resolve("undercap.bash"), Completion.bash(line));
    write(scripts.resolve("undercap.fish"), Completion.fish(line));
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }
}
