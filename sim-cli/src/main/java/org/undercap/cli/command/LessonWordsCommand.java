package org.undercap.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.undercap.cli.lesson.Words;
import org.undercap.cli.output.ExitCodes;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the words of charts and pages, to be translated. */
@Command(
    name = "words",
    description = "Prints all words of charts and pages as a file to translate.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap lesson words > my-language.txt",
      "  undercap lesson words --check my-language.txt"
    })
final class LessonWordsCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Option(
      names = "--check",
      paramLabel = "FILE",
      description = "Check a translation instead, and tell how much of it is done.")
  private Path check;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (check == null) {
      out.print(Words.shipped().asFile());
    } else {
      Words words = Words.translated(check);
      out.print(check + ": good: " + words.translatedCount() + " of " + words.count() + " texts\n");
    }
    out.flush();
    return ExitCodes.DONE;
  }
}
