package org.undercap.cli.report;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartText;
import org.undercap.cli.chart.WaitingChart;
import org.undercap.cli.chart.WaitingLine;
import org.undercap.cli.output.OutputFiles;
import org.undercap.cli.output.OutputFolder;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.planning.CourseTiming;
import org.undercap.planning.StartOutcome;
import org.undercap.planning.Timing;
import org.undercap.scenario.Scenario;

/** The files about start dates: chart, tables, one JSON document and the page as text. */
public final class TimingFiles {
  private static final String CHART = "waiting";
  private static final String STARTS = "starts.csv";
  private static final String BROODLESS = "broodless.csv";
  private static final String JSON = "timing.json";
  private static final String PAGE = "timing.txt";
  private static final String LIMIT =
      "Runs of an average colony of these facts; a real colony may lie anywhere in the range.";
  private static final double PERCENT = 100;
  private final Timing timing;
  private final ChartFiles charts;

  /**
   * The files about start dates.
   *
   * @param timing the start dates tried
   * @param style paper or slide
   * @param svg whether to write the chart as SVG too
   */
  public TimingFiles(Timing timing, ChartStyle style, boolean svg) {
    this.timing = timing;
    charts = new ChartFiles(svg);
    charts.add(CHART, chart(style));
  }

  /**
   * Looks early, before the long run, whether the files can be written.
   *
   * @param folder where they will be written
   * @param svg whether the chart will be written as SVG too
   * @throws org.undercap.cli.output.UsageException if files are there that must stay
   */
  public static void check(OutputFolder folder, boolean svg) {
    List<String> names = new ArrayList<>(List.of(CHART + ".png", STARTS, BROODLESS, JSON, PAGE));
    if (svg) {
      names.add(CHART + ".svg");
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
    names.addAll(List.of(STARTS, BROODLESS, JSON, PAGE));
    try (OutputFiles files = folder.prepare(names)) {
      charts.write(files);
      files.text(STARTS, writer -> TimingCsv.starts(writer, timing));
      files.text(BROODLESS, writer -> TimingCsv.broodless(writer, timing.broodless()));
      files.text(JSON, writer -> PlanningJson.timing(writer, timing));
      files.text(PAGE, writer -> writer.write(new TimingPage(timing).render()));
      files.publish(err);
    }
  }

  private WaitingChart chart(ChartStyle style) {
    Scenario scenario = timing.scope().scenario();
    Outcome left = timing.scope().mitesLeft();
    String day = DateWords.brief(timing.scope().mitesLeftOn());
    String finding = TimingPage.answer(leading()).replaceAll("\\.$", "");
    String alternative =
        "Two panels with the start of the treatment across: winter bees harmed on the left,"
            + " mites left on "
            + day
            + " on the right. "
            + timing.courses().stream().map(TimingPage::answer).collect(Collectors.joining(" "));
    ChartText text =
        new ChartText(
            "The cost of waiting",
            scenario.name() + ", from " + DateWords.day(scenario.start()) + ".",
            finding,
            LIMIT,
            alternative);
    return new WaitingChart(
        timing.courses().stream().map(course -> line(course, left)).toList(),
        spread(timing.untreated(), Ranking.HARM, PERCENT),
        spread(timing.untreated(), left, 1),
        "mites left on " + day,
        text,
        scenario.climate().hemisphere(),
        style);
  }

  /** The course whose best start harms winter bees least. */
  private CourseTiming leading() {
    return timing.courses().stream()
        .filter(course -> course.best().isPresent())
        .min(
            Comparator.comparingDouble(
                c -> c.starts().get(c.best().get()).outcomes().median(Ranking.HARM)))
        .orElse(timing.courses().get(0));
  }

  private static WaitingLine line(CourseTiming course, Outcome left) {
    List<WaitingLine.Point> points = new ArrayList<>();
    for (StartOutcome start : course.starts()) {
      points.add(
          new WaitingLine.Point(
              start.date(),
              spread(start.outcomes(), Ranking.HARM, PERCENT),
              spread(start.outcomes(), left, 1),
              !start.ruledOut().isEmpty()));
    }
    return new WaitingLine(course.words(), points);
  }

  private static WaitingLine.Spread spread(OutcomeTable table, Outcome outcome, double unit) {
    double[] q = table.quantiles(outcome, 0.1, 0.5, 0.9);
    return new WaitingLine.Spread(unit * q[0], unit * q[1], unit * q[2]);
  }
}
