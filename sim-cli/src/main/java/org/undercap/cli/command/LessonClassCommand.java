package org.undercap.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.undercap.cli.lesson.ClassCounts;
import org.undercap.cli.lesson.ClassCountsFile;
import org.undercap.cli.option.EnsembleOptions;
import org.undercap.cli.option.LessonOptions;
import org.undercap.cli.option.OutputOptions;
import org.undercap.cli.output.ExitCodes;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Holds the counts of a class against the model. */
@Command(
    name = "class",
    description = "Draws the washes of a class over the model and says where the model missed.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  undercap lesson class --counts class.csv --climate central-european",
      "  undercap lesson class --counts class.csv --treated thymol-gel=2026-08-10 --out results"
    })
final class LessonClassCommand implements Callable<Integer> {
  private static final int USUAL_MEMBERS = 300;

  @Spec private CommandSpec spec;

  @Option(
      names = "--counts",
      required = true,
      paramLabel = "FILE",
      description = "Table with the columns date,bees,mites: alcohol or soap washes of one colony.")
  private Path counts;

  @Option(
      names = "--treated",
      split = ",",
      paramLabel = "ID=DATE",
      description = "What was done between the counts: treatments with their dates.")
  private List<String> treated = List.of();

  @Mixin private LessonOptions options;
  @Mixin private EnsembleOptions ensemble = new EnsembleOptions(USUAL_MEMBERS);
  @Mixin private OutputOptions output;

  @Override
  public Integer call() {
    List<ClassCountsFile.Row> rows = ClassCountsFile.read(counts);
    output.folder().ifPresent(folder -> ClassCounts.check(folder, output.svg()));
    ClassCounts result =
        ClassCounts.of(rows, treated, options.climate(), ensemble.settings(), options.speech());
    PrintWriter out = spec.commandLine().getOut();
    out.print(result.page());
    out.flush();
    PrintWriter err = spec.commandLine().getErr();
    output.folder().ifPresent(folder -> result.write(folder, options.style(), output.svg(), err));
    err.flush();
    return ExitCodes.DONE;
  }
}
