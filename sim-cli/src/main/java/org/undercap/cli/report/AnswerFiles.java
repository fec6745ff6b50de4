package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.undercap.cli.chart.Chart;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.InfestationChart;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.comparison.CentralRun;
import org.undercap.comparison.Comparison;
import org.undercap.internal.Parallel;

/**
 * The files of an answer: pages for people, a calendar, a sheet for records, charts, and tables and
 * documents for programs.
 */
public final class AnswerFiles {
  /** The page to open first. */
  public static final String PAGE = "answer.html";

  /** The same page for places that show Markdown. */
  public static final String MARKDOWN = "answer.md";

  private static final String CALENDAR = "calendar.ics";
  private static final String SHEET = "record-sheet.html";
  private static final String OUTCOMES = "outcomes.csv";
  private static final String CURVES = "curves.csv";
  private static final String JSON = "comparison.json";

  /** More curves, beside that of doing nothing, cannot be told apart. */
  private static final int CURVES_SHOWN = 3;

  /** Beside the reason, so that the whole answer fits on one page; letters print at 7 points. */
  private static final ChartStyle ON_THE_PAGE =
      new ChartStyle("answer page", 420, 235, 728, 10, 11, 2, 1, 150);

  private final Answer answer;
  private final InputFiles inputs;
  private final ChartFiles charts;
  private final Map<String, Chart> inside = new LinkedHashMap<>();

  /**
   * The files of an answer.
   *
   * @param answer the answer
   * @param inputs the files that it was made from
   * @param style paper or slide, for the charts that are files of their own
   * @param svg whether to write each of them as SVG too
   */
  public AnswerFiles(Answer answer, InputFiles inputs, ChartStyle style, boolean svg) {
    this.answer = answer;
    this.inputs = inputs;
    charts = new ChartFiles(svg);
    charts.add(AnswerWords.PLANS_CHART, plans(style));
    charts.add(AnswerWords.REASON_CHART, infestation(style));
    inside.put(AnswerWords.REASON_CHART, infestation(ON_THE_PAGE));
    inside.put(AnswerWords.PLANS_CHART, plans(ChartStyle.A4));
  }

  private Chart plans(ChartStyle style) {
    Comparison comparison = answer.comparison();
    List<CentralRun> ranked = answer.places().stream().map(comparison.runs()::get).toList();
    return new RunCharts(comparison.scenario(), style).plans(ranked, ChartWords.plans(answer));
  }

  private InfestationChart infestation(ChartStyle style) {
    Comparison comparison = answer.comparison();
    Set<Integer> shown = new LinkedHashSet<>(List.of(answer.nothing()));
    answer.places().stream().limit(CURVES_SHOWN).forEach(shown::add);
    return new RunCharts(comparison.scenario(), style)
        .infestation(
            shown.stream().map(comparison.runs()::get).toList(),
            comparison.runs().get(answer.advice().chosen()),
            ChartWords.infestation(answer));
  }

  private List<String> names() {
    List<String> names = new ArrayList<>(List.of(PAGE, MARKDOWN, CALENDAR, SHEET));
    names.addAll(charts.names());
    names.addAll(List.of(OUTCOMES, CURVES, JSON));
    return names;
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
    List<String> names =
        new ArrayList<>(List.of(PAGE, MARKDOWN, CALENDAR, SHEET, OUTCOMES, CURVES, JSON));
    for (String chart : List.of(AnswerWords.PLANS_CHART, AnswerWords.REASON_CHART)) {
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
   * @param meanwhile done while the files are made, before they get their names
   */
  public void write(OutputFolder folder, PrintWriter err, Runnable meanwhile) {
    Report report = AnswerWords.report(answer);
    Comparison comparison = answer.comparison();
    try (OutputFiles files = folder.prepare(names())) {
      List<Runnable> work =
          List.of(
              meanwhile, // First, since a machine that cannot draw stops the rest.
              () -> charts.write(files),
              () -> files.text(PAGE, out -> out.write(page(report))),
              () -> files.text(CURVES, out -> DailyCsv.curves(out, comparison)),
              () -> files.text(JSON, out -> AnswerJson.write(out, answer)),
              () -> files.text(OUTCOMES, out -> OutcomesCsv.write(out, comparison)),
              () -> files.text(MARKDOWN, out -> out.write(markdown(report))),
              () -> files.text(CALENDAR, out -> out.write(calendar())),
              () -> files.text(SHEET, out -> out.write(RecordSheet.of(answer).html())));
      Parallel.run(
          work.size(), comparison.settings().threads(), () -> number -> work.get(number).run());
      files.publish(err);
    }
  }

  private String page(Report report) {
    return ReportHtml.of(report, ChartFiles.inside(inside));
  }

  private String markdown(Report report) {
    return ReportMarkdown.of(report, charts.names());
  }

  private String calendar() {
    return AnswerCalendar.of(answer, inputs.digest());
  }
}
