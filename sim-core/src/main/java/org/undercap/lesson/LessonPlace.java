package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Circumstances;

/**
 * Where the colonies of the lessons stand. Lessons are told in northern dates; in the south
 * everything is half a year later.
 */
public final class LessonPlace {
  /** A common year, followed by one: no lesson meets 29 February. */
  private static final int YEAR = 2025;

  private static final int HALF_A_YEAR_MONTHS = 6;

  private final Climate climate;
  private final Circumstances circumstances;
  private final ToDoubleFunction<LocalDate> arrivals;
  private final ModelParameters parameters;
  private final Map<Integer, ColonyLanes> shapes = new ConcurrentHashMap<>();

  private LessonPlace(
      Climate climate, Circumstances circumstances, ToDoubleFunction<LocalDate> arrivals) {
    this.climate = climate;
    this.circumstances = circumstances;
    this.arrivals = arrivals;
    parameters = ModelParameters.of(circumstances.parameters());
  }

  /**
   * A place with a climate: closed floors, susceptible mites, no mites arriving.
   *
   * @param climate the climate, in its own months
   * @return the place
   */
  public static LessonPlace in(Climate climate) {
    return new LessonPlace(climate, Circumstances.usual(climate.eggs().max()), date -> 0);
  }

  /**
   * The place of a scenario, with its hive, its arrivals and its parameters.
   *
   * @param scenario the scenario
   * @return the place
   */
  public static LessonPlace of(Scenario scenario) {
    return new LessonPlace(scenario.climate(), scenario.circumstances(), scenario::arrivalsOn);
  }

  /**
   * The colony of a scenario on its first day.
   *
   * @param scenario the scenario
   * @param mites all mites (mites)
   * @return its state
   * @throws IllegalArgumentException if no colony of the season can be scaled to the facts
   */
  public static ColonyLanes colony(Scenario scenario, double mites) {
    ColonyLanes colony = of(scenario).shapeOn(scenario.start());
    colony.setQueenQuality(0, scenario.hive().queenQuality());
    colony.scaleTo(0, scenario.hive().bees(), scenario.hive().broodCells(), mites);
    return colony;
  }

  /**
   * A healthy colony as it usually is on a day.
   *
   * @param date the day
   * @return its state, with few mites
   */
  public ColonyLanes usualColony(LocalDate date) {
    return shapeOn(date);
  }

  ModelParameters parameters() {
    return parameters;
  }

  Circumstances circumstances() {
    return circumstances;
  }

  ToDoubleFunction<LocalDate> arrivals() {
    return arrivals;
  }

  /**
   * The climate.
   *
   * @return in its own months
   */
  public Climate climate() {
    return climate;
  }

  /**
   * A day of the season.
   *
   * @param month month of the north
   * @param day day of the month
   * @return that date in the north, the date half a year later in the south
   */
  public LocalDate on(Month month, int day) {
    LocalDate north = LocalDate.of(YEAR, month, day);
    return climate.hemisphere() == Hemisphere.NORTH ? north : north.plusMonths(HALF_A_YEAR_MONTHS);
  }

  /** The place on the other side of the equator. */
  LessonPlace mirrored() {
    return in(climate.mirrored());
  }

  /** A healthy colony of the season with few mites, to be scaled: a copy. */
  ColonyLanes shapeOn(LocalDate date) {
    return shapes
        .computeIfAbsent(SeasonDay.of(date), day -> StartShape.at(climate, day, parameters))
        .copy();
  }
}
