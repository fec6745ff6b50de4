package org.undercap.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.undercap.cli.output.IfExists;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.cli.output.ProgramVersion;
import org.undercap.cli.output.UsageException;

/** The file that an unexpected failure leaves, for whoever mends the program. */
final class FailureReport {
  static final String NAME = "undercap-failure.txt";

  private final Path folder;

  /** A report in a folder; one that is there already is replaced. */
  FailureReport(Path folder) {
    this.folder = folder;
  }

  /** Writes it; empty if it cannot be written. */
  Optional<Path> write(Throwable failure, List<String> words) {
    StringWriter text = new StringWriter();
    PrintWriter lines = new PrintWriter(text);
    lines.print("undercap " + ProgramVersion.text() + "\n");
    lines.print("command: " + String.join(" ", words) + "\n");
    lines.print("Java " + System.getProperty("java.version") + ", ");
    lines.print(System.getProperty("os.name") + " " + System.getProperty("os.arch") + ", ");
    lines.print(Locale.getDefault() + "\n\n");
    failure.printStackTrace(lines);
    try (OutputFiles files = new OutputFolder(folder, IfExists.OVERWRITE).prepare(List.of(NAME))) {
      files.text(NAME, writer -> writer.write(text.toString()));
      files.publish(new PrintWriter(new StringWriter()));
      return Optional.of(folder.resolve(NAME));
    } catch (UncheckedIOException | UsageException e) {
      return Optional.empty();
    }
  }
}
