package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.undercap.lesson.LessonResult.Figures;
import org.undercap.model.ColonyLanes;
import org.undercap.model.Part;
import org.undercap.scenario.Scenario;
import org.undercap.treatment.Method;

/**
 * Which of two methods leaves fewer mites after six weeks, by the share of the mites that sit on
 * bees and by the temperature outside. Each cell of the map is two runs of the engine: brood is
 * scaled until the wanted share of the mites is on the bees, and every day has the same
 * temperature.
 */
public final class FlipChart {
  private static final int SIX_WEEKS = 42;
  private static final List<Integer> SHARES = List.of(20, 30, 40, 50, 60, 70, 80, 90, 100);
  private static final List<Integer> CELSIUS = List.of(30, 26, 22, 18, 14, 10, 6);

  /** Closer than this, the two methods count as equal (percentage points). */
  private static final double ALIKE = 5;

  private final LessonPlace place;
  private final ColonyLanes colony;
  private final LocalDate date;
  private final Method first;
  private final Method second;
  private final Optional<Own> own;

  /** A colony of the season with brood, from which one with any amount of brood is made. */
  private final ColonyLanes brooding;

  /** Where a colony stands on the map: share of its mites on bees, and temperature (C). */
  private record Own(double onBees, double celsius) {}

  private FlipChart(
      LessonPlace place,
      ColonyLanes colony,
      LocalDate date,
      Method first,
      Method second,
      Optional<Own> own) {
    this.place = place;
    this.colony = colony;
    this.date = date;
    this.first = first;
    this.second = second;
    this.own = own;
    brooding = place.shapeOn(date);
    brooding.scaleTo(0, colony.adults(0), brooding.brood(0), colony.mites(0));
  }

  /**
   * A chart for the colony of a scenario, on its first day.
   *
   * @param scenario place and colony
   * @param mites all mites on the first day (mites), above 0
   * @param first method that is drawn first
   * @param second the other one
   * @return the chart, with the mean temperature of the next six weeks as the place of the colony
   */
  public static FlipChart of(Scenario scenario, double mites, Method first, Method second) {
    ColonyLanes colony = LessonPlace.colony(scenario, mites);
    double onBees = colony.total(Part.MITES_ON_BEES, 0) / colony.mites(0);
    double celsius =
        IntStream.range(0, SIX_WEEKS)
            .mapToObj(scenario.start()::plusDays)
            .mapToDouble(scenario.climate().temperature()::at)
            .average()
            .orElseThrow();
    LessonPlace place = LessonPlace.of(scenario);
    Optional<Own> own = Optional.of(new Own(onBees, celsius));
    return new FlipChart(place, colony, scenario.start(), first, second, own);
  }

  static FlipChart usual(LessonPlace place) {
    LocalDate date = place.on(Month.SEPTEMBER, 1);
    ColonyLanes colony = place.shapeOn(date);
    colony.scaleMites(0, SetUps.number("trial.mites"));
    return new FlipChart(
        place,
        colony,
        date,
        LessonRun.method(TreatmentLessons.GEL),
        LessonRun.method(TreatmentLessons.VAPOUR),
        Optional.empty());
  }

  /**
   * The chart as a lesson.
   *
   * @return map and figures; the finding holds if each method is better somewhere
   */
  public LessonResult lesson() {
    List<String> columns = SHARES.stream().map(String::valueOf).toList();
    List<String> rows = CELSIUS.stream().map(String::valueOf).toList();
    Panel.Builder panel = Panel.map("share-on-bees", "points-more-killed", columns, rows);
    List<Double> differences = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      for (int column = 0; column < columns.size(); column++) {
        double difference = difference(SHARES.get(column) / 100.0, CELSIUS.get(row));
        differences.add(difference);
        panel.cell(new Cell(column, row, difference, mark(column, row)));
      }
    }
    double warmBrood = differences.get(SHARES.size());
    double coldBroodless =
        IntStream.range(0, CELSIUS.size())
            .filter(row -> suits(first, CELSIUS.get(row)) && suits(second, CELSIUS.get(row)))
            .mapToDouble(row -> differences.get((row + 1) * SHARES.size() - 1))
            .min()
            .orElse(0);
    Figures figures =
        new Figures()
            .comparing(first.id(), second.id())
            .put("warmBrood", warmBrood)
            .put("coldBroodless", -coldBroodless);
    own.ifPresent(
        it ->
            figures
                .put("own", 1)
                .put("onBees", it.onBees)
                .put("celsius", it.celsius)
                .put("ownDifference", difference(Math.max(it.onBees, 0.05), it.celsius)));
    boolean holds =
        differences.stream().anyMatch(d -> d > ALIKE)
            && differences.stream().anyMatch(d -> d < -ALIKE);
    return figures.result(place, holds, panel.build());
  }

  private String mark(int column, int row) {
    if (isOwn(column, row)) {
      return "own";
    }
    double celsius = CELSIUS.get(row);
    return suits(first, celsius) && suits(second, celsius) ? "" : "outside-limits";
  }

  private static boolean suits(Method method, double celsius) {
    return celsius >= method.coolLimit().orElse(Double.NEGATIVE_INFINITY)
        && celsius <= method.hotLimit().orElse(Double.POSITIVE_INFINITY);
  }

  private boolean isOwn(int column, int row) {
    return own.isPresent()
        && column == nearest(SHARES, 100 * own.get().onBees)
        && row == nearest(CELSIUS, own.get().celsius);
  }

  private static int nearest(List<Integer> values, double wanted) {
    return IntStream.range(0, values.size())
        .boxed()
        .min(
            (a, b) ->
                Double.compare(Math.abs(values.get(a) - wanted), Math.abs(values.get(b) - wanted)))
        .orElseThrow();
  }

  /** Percentage points by which the first method kills more, against no treatment. */
  private double difference(double onBees, double celsius) {
    ColonyLanes scaled = withShareOnBees(onBees);
    LocalDate last = date.plusDays(SIX_WEEKS);
    LessonRun run = LessonRun.of(place, scaled, date).at(celsius);
    double untreated = run.until(last).mites(last);
    double a = run.doing(first.usual().course().of(first, date)).until(last).mites(last);
    double b = run.doing(second.usual().course().of(second, date)).until(last).mites(last);
    return 100 * (b - a) / untreated;
  }

  /** The colony with so much brood that this share of its mites sits on the bees. */
  private ColonyLanes withShareOnBees(double share) {
    ColonyLanes scaled = brooding.copy();
    double onBees = scaled.total(Part.MITES_ON_BEES, 0);
    double inCells = scaled.mites(0) - onBees;
    double factor = inCells > 0 ? onBees * (1 - share) / (share * inCells) : 0;
    double mites = colony.mites(0);
    scaled.scaleTo(0, colony.adults(0), scaled.brood(0) * factor, mites);
    return scaled;
  }
}
