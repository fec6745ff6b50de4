package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.undercap.cli.chart.BarsChart;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartText;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;

/** The files of a study of sensitivity: chart, table, JSON and the page as text. */
public final class SensitivityFiles {
  private static final String CHART = "sensitivity";
  private static final String CSV = "sensitivity.csv";
  private static final String JSON = "sensitivity.json";
  private static final String PAGE = "sensitivity.txt";

  private SensitivityFiles() {}

  /**
   * Looks early, before the long run, whether the files can be written.
   *
   * @param folder where they will be written
   * @param svg whether the chart will be written as SVG too
   * @throws org.undercap.cli.output.UsageException if files are there that must stay
   */
  public static void check(OutputFolder folder, boolean svg) {
    List<String> names = new ArrayList<>(List.of(CHART + ".png", CSV, JSON, PAGE));
    if (svg) {
      names.add(CHART + ".svg");
    }
    folder.prepare(names).close();
  }

  /**
   * Writes all files, or none.
   *
   * @param page what was found
   * @param style paper or slide
   * @param svg whether to write the chart as SVG too
   * @param folder where to write
   * @param err told which files were written
   */
  public static void write(
      SensitivityPage page, ChartStyle style, boolean svg, OutputFolder folder, PrintWriter err) {
    ChartFiles charts = new ChartFiles(svg);
    charts.add(CHART, chart(page, style));
    List<String> names = new ArrayList<>(charts.names());
    names.addAll(List.of(CSV, JSON, PAGE));
    try (OutputFiles files = folder.prepare(names)) {
      charts.write(files);
      files.text(CSV, page::csv);
      files.text(JSON, page::json);
      files.text(PAGE, writer -> writer.write(page.text()));
      files.publish(err);
    }
  }

  private static BarsChart chart(SensitivityPage page, ChartStyle style) {
    List<SensitivityPage.Importance> ranked = page.ranked();
    String alternative =
        page.finding()
            + ". From the most to the least: "
            + ranked.stream()
                .map(SensitivityPage.Importance::name)
                .collect(Collectors.joining(", "))
            + ".";
    ChartText text =
        new ChartText(
            "What moves the outcome",
            page.subject() + ".",
            page.finding(),
            "Only what was varied is compared, over the ranges that were given or believed.",
            alternative);
    return new BarsChart(
        page.measure(),
        ranked.stream()
            .map(i -> new BarsChart.Bar(i.name(), Math.max(0, i.value()), i.low(), i.high()))
            .toList(),
        text,
        style);
  }
}
