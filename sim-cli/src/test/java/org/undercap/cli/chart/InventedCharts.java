package org.undercap.cli.chart;

import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.Arguments;
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

  private static final String LONG =
      "Drone comb cut out every week in spring, a late swarm taken, strips for six weeks after the"
          + " harvest, and a dribble when the colony has no brood";

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
    return InfestationChart.of(
        courses,
        Optional.of(sixPlans().get(1)),
        Optional.of(threshold),
        TEXT,
        Hemisphere.NORTH,
        style);
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

  /** All kinds of charts in one size, and the odd cases. */
  static Stream<Arguments> all(ChartStyle style) {
    List<Arguments> charts = new ArrayList<>();
    charts.add(arguments(style.name() + " mite curve", miteCurve(style)));
    charts.add(arguments(style.name() + " plans", plans(style)));
    charts.add(arguments(style.name() + " infestation", infestation(style)));
    for (int treatments : new int[] {1, 2, 5}) {
      String waiting = style.name() + " waiting, " + treatments;
      charts.add(arguments(waiting, WaitingChartTest.invented(style, treatments)));
    }
    oddCourses()
        .forEach(
            (name, plan) -> {
              List<PlanCourse> plans = List.of(plan, plan);
              String end = ", " + name;
              charts.add(arguments(style.name() + " mite curve" + end, curve(plan, style)));
              charts.add(arguments(style.name() + " plans" + end, plans(plans, style)));
              charts.add(arguments(style.name() + " infestation" + end, infestation(plans, style)));
            });
    return charts.stream();
  }

  private static Map<String, PlanCourse> oddCourses() {
    Map<String, PlanCourse> odd = new LinkedHashMap<>();
    odd.put("all zero", new PlanCourse(flat("Nothing at all", 100, 0), List.of()));
    odd.put("one day", new PlanCourse(flat("One day", 1, 5), List.of()));
    odd.put("two days", new PlanCourse(flat("Two days", 2, 5), List.of()));
    Course course = course("Lost at once", 300, 900, 0, List.of());
    odd.put("lost on day 3", new PlanCourse(lostOn(course, 3), thymolAndOxalic()));
    odd.put("lost on the first day", new PlanCourse(lostOn(course, 0), List.of()));
    odd.put("lost on the last day", new PlanCourse(lostOn(course, 299), thymolAndOxalic()));
    odd.put("ten years", tenYears());
    odd.put("crowded marks", new PlanCourse(course, crowdedMarks()));
    odd.put("long words", new PlanCourse(course(LONG, 300, 900, 0, List.of()), longMarks()));
    return odd;
  }

  private static List<Mark> crowdedMarks() {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      LocalDate day = START.plusDays(100 + 3L * i);
      marks.add(new Mark(day, day.plusDays(1), "measure number " + i));
    }
    return marks;
  }

  private static List<Mark> longMarks() {
    return List.of(
        mark("2026-07-02", "2026-07-09", LONG),
        mark("2026-12-02", "2027-01-09", LONG + " again"),
        mark("2027-04-20", "2027-04-26", "Varroabehandlungsdurchfuehrungsbestimmungsunterlagen"));
  }

  static Chart curve(PlanCourse plan, ChartStyle style) {
    return MiteCurveChart.of(plan, TEXT, Hemisphere.SOUTH, style);
  }

  static Chart plans(List<PlanCourse> plans, ChartStyle style) {
    return PlansChart.of(plans, TEXT, Hemisphere.SOUTH, style);
  }

  static Chart infestation(List<PlanCourse> plans, ChartStyle style) {
    List<Course> courses = plans.stream().map(PlanCourse::course).toList();
    return InfestationChart.of(
        courses, plans.stream().findFirst(), Optional.empty(), TEXT, Hemisphere.SOUTH, style);
  }
}
