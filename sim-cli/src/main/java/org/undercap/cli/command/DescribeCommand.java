package org.undercap.cli.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.report.ModelDescription;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Describes the model. */
@Command(
    name = "describe",
    description = {
      "Describes the model in the order of the ODD protocol, in Markdown: purpose, state, schedule,"
          + " formulas, and every parameter with value, unit and source.",
      "For the values alone, for programs: undercap parameters --json"
    },
    footerHeading = "%nExamples:%n",
    footer = {"  undercap describe > model-description.md", "  undercap describe | less"})
final class DescribeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    out.print(ModelDescription.markdown());
    out.flush();
    return ExitCodes.DONE;
  }
}
