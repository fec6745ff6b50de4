package org.undercap.cli.lesson;

import java.io.Writer;
import java.time.LocalDate;
import java.util.List;
import org.undercap.cli.output.CsvOutput;
import org.undercap.lesson.Axis;
import org.undercap.lesson.Bar;
import org.undercap.lesson.Cell;
import org.undercap.lesson.LessonResult;
import org.undercap.lesson.Panel;
import org.undercap.lesson.Series;

/** The data of a lesson as one table: a row for each point, bar or cell, with its unit. */
final class LessonCsv {
  private static final List<String> COLUMNS =
      List.of("panel", "series", "of", "across", "value_from", "value", "unit");

  private LessonCsv() {}

  static void write(Writer writer, LessonResult result) {
    CsvOutput csv = CsvOutput.withHeader(writer, COLUMNS);
    for (Panel panel : result.panels()) {
      String unit = panel.unit();
      panel.areas().forEach(series -> rows(csv, panel, series));
      panel.lines().forEach(series -> rows(csv, panel, series));
      for (Bar bar : panel.bars()) {
        String row = panel.rows().get(bar.row());
        csv.row(panel.key(), bar.part(), "", row, bar.from(), bar.to(), unit);
      }
      for (Cell cell : panel.cells()) {
        String row = panel.rows().get(cell.row());
        String column = panel.columns().get(cell.column());
        csv.row(panel.key(), row, cell.mark(), column, "", cell.value(), unit);
      }
    }
  }

  private static void rows(CsvOutput csv, Panel panel, Series series) {
    for (int i = 0; i < series.x().size(); i++) {
      double x = series.x().get(i);
      Object across = panel.axis() == Axis.DATES ? LocalDate.ofEpochDay((long) x) : (Object) x;
      Object of = series.of().isPresent() ? (Object) series.of().getAsDouble() : "";
      csv.row(panel.key(), series.key(), of, across, "", series.y().get(i), panel.unit());
    }
  }
}
