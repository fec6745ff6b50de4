package org.undercap.cli.report;

import java.io.Writer;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.undercap.cli.output.CsvOutput;
import org.undercap.comparison.CentralRun;
import org.undercap.comparison.Comparison;
import org.undercap.ensemble.PlanResult;
import org.undercap.ensemble.Series;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.MiteLedger;

/** Daily tables as comma-separated values. */
public final class DailyCsv {
  private static final double[] SHARES = {0.1, 0.25, 0.5, 0.75, 0.9};
  private static final MathContext BAND_FIGURES = new MathContext(5);
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

  /** Columns of the account of mites. */
  private static final List<String> LEDGER =
      List.of(
          "plan",
          "date",
          "mites_before",
          "mites_born",
          "mites_arrived",
          "mites_lost_at_emergence",
          "mites_died_naturally",
          "mites_killed_on_bees",
          "mites_killed_in_cells",
          "mites_removed",
          "mites_after",
          "difference");

  /**
   * The daily account of mites of several plans, at full precision.
   *
   * @param writer where to write; not closed
   * @param accounts the accounts by name of the plan
   */
  public static void ledger(Writer writer, Map<String, MiteLedger> accounts) {
    CsvOutput csv = CsvOutput.withHeader(writer, LEDGER);
    accounts.forEach(
        (plan, account) -> {
          for (MiteLedger.Entry day : account.entries()) {
            csv.row(
                plan,
                day.date(),
                day.before(),
                day.born(),
                day.arrived(),
                day.lostAtEmergence(),
                day.diedNaturally(),
                day.killedOnBees(),
                day.killedInCells(),
                day.removed(),
                day.after(),
                day.difference());
          }
        });
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
   * The curves of a comparison: the run with middle values at full precision, and quantiles over
   * the ensemble, which are known to 2 % and so written with five figures.
   *
   * @param writer where to write; not closed
   * @param comparison the comparison
   */
  public static void curves(Writer writer, Comparison comparison) {
    List<String> header = new ArrayList<>(List.of("plan", "date"));
    for (Series series : Series.values()) {
      header.add(series.header());
      SHARE_NAMES.forEach(share -> header.add(series.header() + "_" + share));
    }
    CsvOutput csv = CsvOutput.withHeader(writer, header);
    for (int plan = 0; plan < comparison.results().size(); plan++) {
      curves(csv, comparison.runs().get(plan).table(), comparison.results().get(plan));
    }
  }

  private static void curves(CsvOutput csv, DailyTable table, PlanResult result) {
    Map<Series, List<double[]>> bands = new EnumMap<>(Series.class);
    for (Series series : Series.values()) {
      bands.put(
          series,
          Arrays.stream(SHARES).mapToObj(share -> result.bands().quantile(series, share)).toList());
    }
    for (int day = 0; day < result.bands().days(); day++) {
      List<Object> row =
          new ArrayList<>(List.of(result.plan().name(), table.start().plusDays(day)));
      for (Series series : Series.values()) {
        row.add(day < table.days() ? middle(table, series, day) : 0.0);
        for (double[] band : bands.get(series)) {
          row.add(
              Figures.known(band[day]).stream()
                  .map(x -> new BigDecimal(x).round(BAND_FIGURES).doubleValue())
                  .findFirst());
        }
      }
      csv.row(row.toArray());
    }
  }

  private static double middle(DailyTable table, Series series, int day) {
    return switch (series) {
      case MITES_ON_BEES -> table.at(DailyColumn.MITES_ON_BEES, day);
      case MITES_IN_CELLS -> table.mitesInCells(day);
      case MITES_PER_100_BEES -> table.mitesPer100Bees(day);
      case ADULTS -> table.adults(day);
    };
  }
}
