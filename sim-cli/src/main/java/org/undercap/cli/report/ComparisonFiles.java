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
    charts.add("plans", drawings.plans(ranked, finding));
    charts.add("infestation", drawings.infestation(comparison.runs(), finding));
  }

  /**
   * Names of the files that need no chart to be laid out, for an early look at the folder.
   *
   * @return names
   */
  private List<String> names() {
    List<String> names = new ArrayList<>(charts.names());
    names.addAll(List.of(OUTCOMES, CURVES, JSON, PAGE));
    return names;
  }

  /**
   * Writes all files, or none.
   *
   * @param folder where to write
   * @param err told which files were written
   */
  public void write(OutputFolder folder, PrintWriter err) {
    try (OutputFiles files = folder.prepare(names())) {
      charts.write(files);
      files.text(OUTCOMES, writer -> OutcomesCsv.write(writer, comparison));
      files.text(CURVES, writer -> DailyCsv.curves(writer, comparison));
      files.text(JSON, writer -> ComparisonJson.write(writer, comparison));
      files.text(PAGE, writer -> writer.write(ComparisonMarkdown.of(comparison, charts.names())));
      files.publish(err);
    }
  }
}
