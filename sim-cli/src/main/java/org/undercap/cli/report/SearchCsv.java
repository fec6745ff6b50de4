package org.undercap.cli.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.undercap.cli.output.CsvOutput;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.planning.PlanSearch;
import org.undercap.planning.TriedSchedule;

/** Good schedules as comma-separated values. */
public final class SearchCsv {
  private SearchCsv() {}

  /**
   * Writes one row for each schedule.
   *
   * @param writer where to write; not closed
   * @param result what a search found
   */
  public static void write(Writer writer, PlanSearch.Result result) {
    List<String> header = new ArrayList<>(List.of("schedule", "courses", "cost", "minutes"));
    List<Outcome> outcomes = List.of(Ranking.HARM, result.scope().mitesLeft());
    outcomes.forEach(
        o -> TimingCsv.SHARE_NAMES.forEach(name -> header.add(o.header() + "_" + name)));
    CsvOutput csv = CsvOutput.withHeader(writer, header);
    for (TriedSchedule tried : result.front()) {
      List<Object> row =
          new ArrayList<>(
              List.of(
                  tried.schedule().plan().name(),
                  tried.schedule().courses().size(),
                  tried.cost(),
                  tried.schedule().minutes()));
      TimingCsv.addQuantiles(row, tried.outcomes(), outcomes);
      csv.row(row.toArray());
    }
  }
}
