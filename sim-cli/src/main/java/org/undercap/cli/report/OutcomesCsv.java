package org.undercap.cli.report;

import java.io.Writer;
import java.util.List;
import org.undercap.cli.output.CsvOutput;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;

/** Outcomes of a comparison as comma-separated values, one row for each plan and outcome. */
public final class OutcomesCsv {
  private static final double[] SHARES = {0.1, 0.25, 0.5, 0.75, 0.9};

  private OutcomesCsv() {}

  /**
   * Writes the table; the unit of a value stands in the name of its outcome.
   *
   * @param writer where to write; not closed
   * @param comparison the comparison
   */
  public static void write(Writer writer, Comparison comparison) {
    CsvOutput csv =
        CsvOutput.withHeader(
            writer, List.of("plan", "rank", "outcome", "mean", "p10", "p25", "p50", "p75", "p90"));
    for (int rank = 0; rank < comparison.ranking().size(); rank++) {
      PlanResult result = comparison.results().get(comparison.ranking().get(rank));
      for (Outcome outcome : Outcome.values()) {
        if (comparison.tells(outcome)) {
          double[] q = result.outcomes().quantiles(outcome, SHARES);
          csv.row(
              result.plan().name(),
              rank + 1,
              outcome.header(),
              Figures.known(result.outcomes().mean(outcome)),
              Figures.known(q[0]),
              Figures.known(q[1]),
              Figures.known(q[2]),
              Figures.known(q[3]),
              Figures.known(q[4]));
        }
      }
    }
  }
}
