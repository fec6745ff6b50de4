package org.undercap.cli.command;

import java.io.PrintWriter;
import org.undercap.advice.Refusal;
import org.undercap.cli.output.ExitCodes;

/** Says that there is no advice. */
final class Refusals {
  private Refusals() {}

  /** Prints a refusal; returns the exit code. */
  static int print(Refusal refusal, PrintWriter out) {
    out.print(refusal.text() + "\n");
    out.flush();
    return ExitCodes.CHECK_SAYS_NO;
  }
}
