package org.undercap.cli.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.undercap.climate.Hemisphere;

/** Charts of invented curves: shaped like a season, but not computed by the model. */
final class InventedCharts {
  static final LocalDate START = LocalDate.of(2026, 7, 1);

  private static final ChartText TEXT =
      new ChartText(
          "Mites in the colony over autumn and winter",
          "Hollerbach Terraces, 9 mites a day on the board on 8 Aug.",
          "Thymol gel in August keeps the winter bees; one oxalic treatment in December finishes"
              + " the work.",
          "One simulated colony with average weather: true counts can lie well above or below the"
              + " lines.",
          "Mites on bees fall from 900 to 100 during the thymol treatment and to 20 in December.");

  private InventedCharts() {}

  static ChartText text() {
    return TEXT;
  }

  /** A season in which each treatment day removes a share of the mites on bees. */
  static Course course(String plan, int days, double mites, double kill, List<Mark> marks) {
    double[] onBees = new double[days];
    double[] inCells = new double[days];
    double[] adults = new double[days];
    double[] brood = new double[days];
    double all = mites;
    for (int day = 0; day < days; day++) {
      LocalDate date = START.plusDays(day);
      double season = StrictMath.cos(2 * Math.PI * (date.getDayOfYear() - 165) / 365.0);
      brood[day] = Math.max(0, 14000 + 18000 * season);
      adults[day] =
          19000 + 12000 * StrictMath.cos(2 * Math.PI * (date.getDayOfYear() - 200) / 365.0);
      double hidden = 0.68 * brood[day] / (brood[day] + 3000);
      boolean treated =
          marks.stream()
              .anyMatch(mark -> !date.isBefore(mark.from()) && !date.isAfter(mark.until()));
      all *= 1 + 0.018 * brood[day] / 30000 - 0.002 - (treated ? kill * (1 - hidden) : 0);
      onBees[day] = all * (1 - hidden);
      inCells[day] = all * hidden;
    }
    return new Course(plan, START, onBees, inCells, adults, brood, OptionalInt.empty());
  }

  static Course lostOn(Course course, int day) {
    return new Course(
        course.plan(),
        course.start(),
        course.mitesOnBees(),
        course.mitesInCells(),
        course.adults(),
        course.brood(),
        OptionalInt.of(day));
  }

  static Course flat(String plan, int days, double value) {
    double[] values = new double[days];
    Arrays.fill(values, value);
    return new Course(plan, START, values, values, values, values, OptionalInt.empty());
  }

  static Mark mark(String from, String until, String words) {
    return new Mark(LocalDate.parse(from), LocalDate.parse(until), words);
  }

  static List<Mark> thymolAndOxalic() {
    return List.of(
        mark("2026-08-10", "2026-08-23", "thymol gel"),
        mark("2026-08-24", "2026-09-06", "thymol gel"),
        mark("2026-12-12", "2026-12-12", "oxalic dribble"));
  }

  /** Six plans, one of them without treatment and lost. */
  static List<PlanCourse> sixPlans() {
    List<Mark> vapours =
        List.of(
            mark("2026-08-10", "2026-08-10", "oxalic vapour"),
            mark("2026-08-15", "2026-08-15", "oxalic vapour"),
            mark("2026-08-20", "2026-08-20", "oxalic vapour"));
    List<Mark> formic =
        List.of(
            mark("2026-08-08", "2026-08-18", "formic acid pads"),
            mark("2026-12-12", "2026-12-12", "oxalic dribble"));
    List<Mark> caging =
        List.of(
            mark("2026-07-15", "2026-08-09", "queen caged"),
            mark("2026-08-10", "2026-08-10", "oxalic dribble"));
    List<Mark> late = List.of(mark("2026-09-20", "2026-11-01", "amitraz strips"));
    return List.of(
        new PlanCourse(lostOn(course("Do nothing", 300, 900, 0, List.of()), 190), List.of()),
        plan("Thymol gel twice in August, oxalic dribble in December", 0.06, thymolAndOxalic()),
        plan("Three oxalic vapours", 0.7, vapours),
        plan("Formic acid pads, then oxalic dribble", 0.2, formic),
        plan(
            "Queen caged for 25 days, then oxalic dribble on bees without sealed brood",
            0.1,
            caging),
        plan("Strips late", 0.1, late));
  }

  private static PlanCourse plan(String name, double kill, List<Mark> marks) {
    return new PlanCourse(course(name, 300, 900, kill, marks), marks);
  }

  static Chart miteCurve(ChartStyle style) {
    PlanCourse plan = plan("Thymol gel twice", 0.06, thymolAndOxalic());
    return MiteCurveChart.of(plan, TEXT, Hemisphere.NORTH, style);
  }

  static Chart plans(ChartStyle style) {
    return PlansChart.of(sixPlans(), TEXT, Hemisphere.NORTH, style);
  }

  static Chart infestation(ChartStyle style) {
    List<Course> courses = sixPlans().stream().map(PlanCourse::course).toList();
    ThresholdLine threshold =
        new ThresholdLine(3, "act at 3 mites per 100 bees in August", "invented limit, 2026");
    return InfestationChart.of(courses, Optional.of(threshold), TEXT, Hemisphere.NORTH, style);
  }

  /** Ten years with three treatments each year. */
  static PlanCourse tenYears() {
    List<Mark> marks = new ArrayList<>();
    for (int year = 2026; year < 2036; year++) {
      marks.add(mark(year + "-08-10", year + "-08-23", "thymol gel"));
      marks.add(mark(year + "-08-24", year + "-09-06", "thymol gel"));
      marks.add(mark(year + "-12-12", year + "-12-12", "oxalic dribble"));
    }
    return new PlanCourse(course("Every year the same", 3650, 900, 0.06, marks), marks);
  }
}
