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
  private static final String DAILY = "daily.csv";
  private static final String BANDS = "bands.csv";
  private static final String OUTCOMES = "outcomes.csv";
  private static final String JSON = "comparison.json";
  private static final String PAGE = "comparison.md";
  private final Comparison comparison;
  private final double mites;
  private final ChartFiles charts;

  /**
   * The files of a comparison.
   *
   * @param comparison the comparison
   * @param mites middle value of all mites on the first day (mites)
   * @param style paper or slide
   * @param svg whether to write each chart as SVG too
   */
  public ComparisonFiles(Comparison comparison, double mites, ChartStyle style, boolean svg) {
    this.comparison = comparison;
    this.mites = mites;
    charts = new ChartFiles(svg);
    RunCharts drawings = new RunCharts(comparison.scenario(), style);
    List<CentralRun> ranked = comparison.ranking().stream().map(comparison.runs()::get).toList();
    String finding = new ComparisonPage(comparison, mites).answer().replaceAll("\\.$", "");
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
    names.addAll(List.of(OUTCOMES, DAILY, BANDS, JSON, PAGE));
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
      files.text(DAILY, writer -> DailyCsv.runs(writer, comparison.runs()));
      files.text(
          BANDS, writer -> DailyCsv.bands(writer, comparison.scenario(), comparison.results()));
      files.text(JSON, writer -> ComparisonJson.write(writer, comparison, mites));
      files.text(
          PAGE, writer -> writer.write(ComparisonMarkdown.of(comparison, mites, charts.names())));
      files.publish(err);
    }
  }
}
