package org.undercap.cli.report;

import java.io.Writer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.undercap.cli.output.CsvOutput;
import org.undercap.comparison.CentralRun;
import org.undercap.ensemble.PlanResult;
import org.undercap.ensemble.Series;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;

/** Daily tables as comma-separated values. */
public final class DailyCsv {
  private static final double[] SHARES = {0.1, 0.25, 0.5, 0.75, 0.9};
  private static final List<String> SHARE_NAMES = List.of("p10", "p25", "p50", "p75", "p90");

  private DailyCsv() {}

  /**
   * One run with the columns of the daily table and nothing else, at full precision.
   *
   * @param writer where to write; not closed
   * @param table the run
   */
  public static void trace(Writer writer, DailyTable table) {
    List<DailyColumn> columns = Arrays.asList(DailyColumn.values());
    CsvOutput csv =
        CsvOutput.withHeader(
            writer, columns.stream().map(DailyColumn::header).collect(Collectors.toList()));
    for (int day = 0; day < table.days(); day++) {
      int today = day;
      csv.row(columns.stream().map(column -> value(table, column, today)).toArray());
    }
  }

  private static Object value(DailyTable table, DailyColumn column, int day) {
    double value = table.at(column, day);
    return column == DailyColumn.DAY || column == DailyColumn.DOY
        ? (Object) (int) value
        : (Object) value;
  }

  /**
   * Runs of several plans, with plan and date before the columns of the daily table.
   *
   * @param writer where to write; not closed
   * @param runs the runs
   */
  public static void runs(Writer writer, List<CentralRun> runs) {
    List<String> header = new ArrayList<>(List.of("plan", "date", "mites_per_100_bees"));
    for (DailyColumn column : DailyColumn.values()) {
      header.add(column.header());
    }
    CsvOutput csv = CsvOutput.withHeader(writer, header);
    for (CentralRun run : runs) {
      DailyTable table = run.table();
      for (int day = 0; day < table.days(); day++) {
        List<Object> row = new ArrayList<>();
        row.add(run.plan().name());
        row.add(table.start().plusDays(day));
        row.add(table.mitesPer100Bees(day));
        for (DailyColumn column : DailyColumn.values()) {
          row.add(value(table, column, day));
        }
        csv.row(row.toArray());
      }
    }
  }

  /**
   * How the daily curves of an ensemble spread.
   *
   * @param writer where to write; not closed
   * @param scenario for the dates
   * @param results the plans
   */
  public static void bands(Writer writer, Scenario scenario, List<PlanResult> results) {
    List<String> header = new ArrayList<>(List.of("plan", "date"));
    for (Series series : Series.values()) {
      SHARE_NAMES.forEach(share -> header.add(series.header() + "_" + share));
    }
    CsvOutput csv = CsvOutput.withHeader(writer, header);
    for (PlanResult result : results) {
      List<double[]> columns = new ArrayList<>();
      for (Series series : Series.values()) {
        for (double share : SHARES) {
          columns.add(result.bands().quantile(series, share));
        }
      }
      for (int day = 0; day < result.bands().days(); day++) {
        List<Object> row = new ArrayList<>();
        row.add(result.plan().name());
        row.add(scenario.start().plusDays(day));
        for (double[] column : columns) {
          row.add(column[day]);
        }
        csv.row(row.toArray());
      }
    }
  }
}
