package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.undercap.climate.Climate;
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

  /** Closer than this, the two methods count as equal (mites of 100). */
  private static final double ALIKE = 5;

  private final LessonPlace place;
  private final ColonyLanes colony;
  private final LocalDate date;
  private final Method first;
  private final Method second;
  private final Spot spot;
  private final boolean own;

  /** A colony of the season with brood, from which one with any amount of brood is made. */
  private final ColonyLanes brooding;

  /** Where the colony stands on the map: share of its mites on bees, and temperature (C). */
  private record Spot(double onBees, double celsius) {
    static Spot of(ColonyLanes colony, LocalDate date, Climate climate) {
      double celsius =
          IntStream.range(0, SIX_WEEKS)
              .mapToObj(date::plusDays)
              .mapToDouble(climate.temperature()::at)
              .average()
              .orElseThrow();
      return new Spot(colony.total(Part.MITES_ON_BEES, 0) / colony.mites(0), celsius);
    }
  }

  private FlipChart(
      LessonPlace place,
      ColonyLanes colony,
      LocalDate date,
      Method first,
      Method second,
      boolean own) {
    this.place = place;
    this.colony = colony;
    this.date = date;
    this.first = first;
    this.second = second;
    this.own = own;
    spot = Spot.of(colony, date, place.climate());
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
    LessonPlace place = LessonPlace.of(scenario);
    return new FlipChart(place, colony, scenario.start(), first, second, true);
  }

  static FlipChart usual(LessonPlace place) {
    LocalDate date = place.on(Month.AUGUST, 15);
    ColonyLanes colony = place.shapeOn(date);
    colony.scaleMites(0, SetUps.number("trial.mites"));
    return new FlipChart(
        place,
        colony,
        date,
        LessonRun.method(TreatmentLessons.GEL),
        LessonRun.method(TreatmentLessons.VAPOUR),
        false);
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
        panel.cell(new Cell(column, row, difference, mark(column, row, difference)));
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
            .put("date", date)
            .put("warmBrood", warmBrood)
            .put("coldBroodless", -coldBroodless);
    if (own) {
      figures
          .put("own", 1)
          .put("onBees", spot.onBees)
          .put("celsius", spot.celsius)
          .put("ownDifference", difference(Math.max(spot.onBees, 0.05), spot.celsius));
    }
    boolean holds =
        differences.stream().anyMatch(d -> d > ALIKE)
            && differences.stream().anyMatch(d -> d < -ALIKE);
    return figures.result(place, holds, panel.build());
  }

  /** What cannot be used at a temperature is marked where it would leave fewer mites. */
  private String mark(int column, int row, double difference) {
    if (column == nearest(SHARES, 100 * spot.onBees) && row == nearest(CELSIUS, spot.celsius)) {
      return own ? "own" : "example";
    }
    double celsius = CELSIUS.get(row);
    double shown = Math.rint(difference);
    boolean firstSuits = shown <= -ALIKE || suits(first, celsius);
    boolean secondSuits = shown >= ALIKE || suits(second, celsius);
    return firstSuits && secondSuits ? "" : "outside-limits";
  }

  private static boolean suits(Method method, double celsius) {
    return celsius >= method.coolLimit().orElse(Double.NEGATIVE_INFINITY)
        && celsius <= method.hotLimit().orElse(Double.POSITIVE_INFINITY);
  }

  private static int nearest(List<Integer> values, double wanted) {
    return IntStream.range(0, values.size())
        .boxed()
        .min(
            (a, b) ->
                Double.compare(Math.abs(values.get(a) - wanted), Math.abs(values.get(b) - wanted)))
        .orElseThrow();
  }

  /** Mites that the first method leaves fewer after six weeks, of 100 in an untreated colony. */
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
