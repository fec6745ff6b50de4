package org.undercap.cli.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.undercap.cli.output.CsvOutput;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.planning.BroodlessTime;
import org.undercap.planning.CourseTiming;
import org.undercap.planning.StartOutcome;
import org.undercap.planning.Timing;

/** Start dates as comma-separated values. */
public final class TimingCsv {
  static final double[] SHARES = {0.1, 0.25, 0.5, 0.75, 0.9};
  static final List<String> SHARE_NAMES = List.of("p10", "p25", "p50", "p75", "p90");

  private TimingCsv() {}

  /**
   * Writes the starts, one row for each course and date; then a row without treatment.
   *
   * @param writer where to write; not closed
   * @param timing the start dates tried
   */
  public static void starts(Writer writer, Timing timing) {
    List<String> header =
        new ArrayList<>(
            List.of("method", "times", "every_days", "start", "share_within_limits", "ruled_out"));
    List<Outcome> outcomes = List.of(Ranking.HARM, timing.scope().mitesLeft());
    outcomes.forEach(o -> SHARE_NAMES.forEach(name -> header.add(o.header() + "_" + name)));
    CsvOutput csv = CsvOutput.withHeader(writer, header);
    for (CourseTiming course : timing.courses()) {
      for (StartOutcome start : course.starts()) {
        List<Object> row =
            new ArrayList<>(
                List.of(
                    course.method().id(),
                    course.course().times(),
                    course.course().everyDays(),
                    start.date(),
                    start.shareInBand(),
                    String.join("; ", start.ruledOut())));
        addQuantiles(row, start.outcomes(), outcomes);
        csv.row(row.toArray());
      }
    }
    List<Object> row = new ArrayList<>(List.of("none", 0, 0, "", "", ""));
    addQuantiles(row, timing.untreated(), outcomes);
    csv.row(row.toArray());
  }

  static void addQuantiles(List<Object> row, OutcomeTable table, List<Outcome> outcomes) {
    for (Outcome outcome : outcomes) {
      for (double value : table.quantiles(outcome, SHARES)) {
        row.add(value);
      }
    }
  }

  /**
   * Writes the chance of no brood day by day.
   *
   * @param writer where to write; not closed
   * @param time the chances
   */
  public static void broodless(Writer writer, BroodlessTime time) {
    CsvOutput csv = CsvOutput.withHeader(writer, List.of("date", "broodless_fraction"));
    for (int day = 0; day < time.chances().size(); day++) {
      csv.row(time.from().plusDays(day), time.chances().get(day));
    }
  }
}
