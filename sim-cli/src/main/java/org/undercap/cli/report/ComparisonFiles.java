package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.comparison.CentralRun;
import org.undercap.comparison.Comparison;

/**
 * The files of a comparison: charts, tables, one JSON document and a page in Markdown that shows
 * them.
 */
public final class ComparisonFiles {
  private static final String CURVES = "curves.csv";
  private static final String OUTCOMES = "outcomes.csv";
  private static final String JSON = "comparison.json";
  private static final String PAGE = "comparison.md";
  private static final List<String> TABLES = List.of(OUTCOMES, CURVES, JSON, PAGE);
  private static final String PLANS = "plans";
  private static final String INFESTATION = "infestation";
  private final Comparison comparison;
  private final ChartFiles charts;

  /**
   * The files of a comparison.
   *
   * @param comparison the comparison
   * @param style paper or slide
   * @param svg whether to write each chart as SVG too
   */
  public ComparisonFiles(Comparison comparison, ChartStyle style, boolean svg) {
    this.comparison = comparison;
    charts = new ChartFiles(svg);
    RunCharts drawings = new RunCharts(comparison.scenario(), style);
    List<CentralRun> ranked = comparison.ranking().stream().map(comparison.runs()::get).toList();
    String finding = new ComparisonPage(comparison).answer().replaceAll("\\.$", "");
    charts.add(PLANS, drawings.plans(ranked, finding));
    charts.add(INFESTATION, drawings.infestation(comparison.runs(), finding));
  }

  /**
   * Looks early, before the long run, whether the files can be written. Second pages of charts,
   * which many plans make, are not known yet.
   *
   * @param folder where they will be written
   * @param svg whether each chart will be written as SVG too
   * @throws org.undercap.cli.output.UsageException if files are there that must stay
   */
  public static void check(OutputFolder folder, boolean svg) {
    List<String> names = new ArrayList<>(TABLES);
    for (String chart : List.of(PLANS, INFESTATION)) {
      names.add(chart + ".png");
      if (svg) {
        names.add(chart + ".svg");
      }
    }
    folder.prepare(names).close();
  }

  /**
   * Writes all files, or none.
   *
   * @param folder where to write
   * @param err told which files were written
   */
  public void write(OutputFolder folder, PrintWriter err) {
    List<String> names = new ArrayList<>(charts.names());
    names.addAll(TABLES);
    try (OutputFiles files = folder.prepare(names)) {
      charts.write(files);
      files.text(OUTCOMES, writer -> OutcomesCsv.write(writer, comparison));
      files.text(CURVES, writer -> DailyCsv.curves(writer, comparison));
      files.text(JSON, writer -> ComparisonJson.write(writer, comparison));
      files.text(PAGE, writer -> writer.write(ComparisonMarkdown.of(comparison, charts.names())));
      files.publish(err);
    }
  }
}
