package org.undercap.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.undercap.advice.Refusal;
import org.undercap.cli.output.ExitCodes;
import org.undercap.cli.report.RefusalFiles;
import org.undercap.cli.report.RefusalWords;
import org.undercap.cli.report.ReportText;
import org.undercap.scenario.Scenario;

/** Says that there is no advice. */
final class Refusals {
  private Refusals() {}

  /** Prints a refusal, as text or JSON; returns the exit code. */
  static int print(Scenario scenario, Refusal refusal, boolean json, PrintWriter out) {
    if (json) {
      StringWriter document = new StringWriter();
      RefusalFiles.json(document, scenario, refusal);
      out.print(document);
    } else {
      out.print(ReportText.of(RefusalWords.report(scenario, refusal)));
    }
    out.flush();
    return ExitCodes.CHECK_SAYS_NO;
  }
}
