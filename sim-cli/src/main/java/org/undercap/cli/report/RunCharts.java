package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.undercap.cli.chart.ChartStyle;
import org.undercap.cli.chart.ChartText;
import org.undercap.cli.chart.Course;
import org.undercap.cli.chart.InfestationChart;
import org.undercap.cli.chart.Mark;
import org.undercap.cli.chart.MiteCurveChart;
import org.undercap.cli.chart.PlanCourse;
import org.undercap.cli.chart.PlansChart;
import org.undercap.cli.chart.ThresholdLine;
import org.undercap.cli.output.Numbers;
import org.undercap.comparison.CentralRun;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyColumn;
import org.undercap.simulation.DailyTable;
import org.undercap.treatment.PlanStep;

/** The charts of single runs: their data, and words that say what is seen. */
public final class RunCharts {
  /** Two figures are enough for a number that was estimated. */
  private static final int FIGURES = 2;

  private static final String LIMIT = "A typical season; real colonies scatter widely around it.";
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
  private final Scenario scenario;
  private final ChartStyle style;

  /**
   * Charts of a scenario.
   *
   * @param scenario place, colony and plans
   * @param style paper or slide
   */
  public RunCharts(Scenario scenario, ChartStyle style) {
    this.scenario = scenario;
    this.style = style;
  }

  /**
   * The mite curve of a plan.
   *
   * @param run the run
   * @return the chart
   */
  public MiteCurveChart miteCurve(CentralRun run) {
    DailyTable table = run.table();
    int peak = peakDay(table);
    String finding =
        run.plan().name()
            + ": "
            + mites(table.mites(0))
            + " mites at the start, "
            + (peak == 0
                ? ""
                : mites(table.mites(peak)) + " on " + day(table.start().plusDays(peak)) + ", ")
            + ending(table);
    String alternative =
        "Line chart of mites on adult bees and mites in sealed brood, with bees and brood behind, from "
            + day(scenario.start())
            + " to "
            + day(scenario.end())
            + ". "
            + finding
            + ".";
    ChartText text =
        new ChartText("Mites on bees and under the cappings", place(), finding, LIMIT, alternative);
    return MiteCurveChart.of(course(run), text, scenario.climate().hemisphere(), style);
  }

  /**
   * All plans below each other.
   *
   * @param runs the runs in the order of the panels
   * @param finding what the reader learns
   * @return the chart
   */
  public PlansChart plans(List<CentralRun> runs, String finding) {
    String alternative =
        "One panel for each plan with mites on adult bees, in sealed brood and together, on the same axes. "
            + finding
            + ".";
    ChartText text = new ChartText("Mites under each plan", place(), finding, LIMIT, alternative);
    return PlansChart.of(
        runs.stream().map(this::course).toList(), text, scenario.climate().hemisphere(), style);
  }

  /**
   * Mites per 100 bees under all plans.
   *
   * @param runs the runs
   * @param advised the run whose treatments are shown
   * @param finding what the reader learns
   * @return the chart
   */
  public InfestationChart infestation(List<CentralRun> runs, CentralRun advised, String finding) {
    String alternative =
        "Mites on bees for each 100 bees, one line for each plan that is shown, and the limit at which to act. Bands show the treatments of \""
            + advised.plan().name()
            + "\". "
            + finding
            + ".";
    ChartText text =
        new ChartText(title(advised, runs.size()), place(), finding, LIMIT, alternative);
    return InfestationChart.of(
        runs.stream().map(run -> course(run).course()).toList(),
        Optional.of(course(advised)),
        Optional.of(threshold()),
        text,
        scenario.climate().hemisphere(),
        style);
  }

  private String title(CentralRun advised, int shown) {
    String title =
        advised.plan().steps().isEmpty()
            ? "Mites on 100 bees under each plan"
            : "Bands: the treatments advised";
    return shown == scenario.plans().size() ? title : title + "; the best plans only";
  }

  private ThresholdLine threshold() {
    return new ThresholdLine(
        scenario.limit(),
        "limit " + Numbers.exact(scenario.limit()) + " per 100",
        scenario
            .threshold()
            .map(own -> own.source().map(source -> source.key()).orElse("your own"))
            .orElse("the usual"));
  }

  private String place() {
    String stamp = scenario.study() ? ". " + Report.STUDY : "";
    return scenario.name() + ", from " + day(scenario.start()) + stamp;
  }

  private PlanCourse course(CentralRun run) {
    DailyTable table = run.table();
    int days = scenario.days();
    double[] onBees = new double[days];
    double[] inCells = new double[days];
    double[] adults = new double[days];
    double[] brood = new double[days];
    for (int day = 0; day < table.days(); day++) {
      onBees[day] = Math.max(0, table.at(DailyColumn.MITES_ON_BEES, day));
      inCells[day] = Math.max(0, table.mitesInCells(day));
      adults[day] = table.adults(day);
      brood[day] = table.brood(day);
    }
    OptionalInt lost = table.lost() ? OptionalInt.of(table.days() - 1) : OptionalInt.empty();
    return new PlanCourse(
        new Course(run.plan().name(), table.start(), onBees, inCells, adults, brood, lost),
        marks(run));
  }

  private List<Mark> marks(CentralRun run) {
    List<Mark> marks = new ArrayList<>();
    for (PlanStep step : scenario.stepsUnder(run.plan())) {
      LocalDate from = max(step.date(), scenario.start());
      LocalDate until = min(step.until(), scenario.end());
      if (!until.isBefore(from)) {
        marks.add(new Mark(from, until, step.words()));
      }
    }
    return marks;
  }

  private static LocalDate max(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }

  private static LocalDate min(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }

  private static int peakDay(DailyTable table) {
    int peak = 0;
    for (int day = 0; day < table.days(); day++) {
      peak = table.mites(day) > table.mites(peak) ? day : peak;
    }
    return peak;
  }

  private String ending(DailyTable table) {
    int last = table.days() - 1;
    LocalDate date = scenario.start().plusDays(last);
    return table.lost()
        ? "the colony is lost on "
            + day(date)
            + ", day "
            + ChronoUnit.DAYS.between(scenario.start(), date)
        : mites(table.mites(last)) + " on " + day(date);
  }

  private static String mites(double mites) {
    return mites < 1 ? "under 1" : Numbers.rounded(mites, FIGURES);
  }

  private static String day(LocalDate date) {
    return DAY.format(date);
  }
}
