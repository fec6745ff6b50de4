package org.undercap.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.output.ProgramVersion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints how to cite the program. */
@Command(
    name = "cite",
    description = {
      "Prints how to cite this version of the program, as BibTeX.",
      "The findings on which its values rest are listed by 'undercap sources'; cite those that matter too."
    },
    footerHeading = "%nExamples:%n",
    footer = {"  undercap cite >> references.bib", "  undercap cite --cff > CITATION.cff"})
final class CiteCommand implements Callable<Integer> {
  private static final String VERSION = "%VERSION%";

  @Spec private CommandSpec spec;

  @Option(names = "--cff", description = "Print the Citation File Format instead.")
  private boolean cff;

  @Override
  public Integer call() {
    String name = cff ? "citation.cff" : "citation.bib";
    try (InputStream in = ProgramVersion.class.getResourceAsStream("/org/undercap/cli/" + name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      spec.commandLine().getOut().print(text.replace(VERSION, ProgramVersion.text()));
      return ExitCodes.DONE;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
