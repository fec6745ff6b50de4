package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.climate.SeasonDay;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.StartShape;

/**
 * Where the colonies of the lessons stand. Lessons are told in northern dates; in the south
 * everything is half a year later.
 */
public final class LessonPlace {
  static final ModelParameters PARAMETERS = ModelParameters.of(ParameterSet.shipped());

  /** A common year, followed by one: no lesson meets 29 February. */
  private static final int YEAR = 2025;

  private static final int HALF_A_YEAR_MONTHS = 6;

  private final Climate climate;
  private final Map<Integer, ColonyLanes> shapes = new ConcurrentHashMap<>();

  private LessonPlace(Climate climate) {
    this.climate = climate;
  }

  /**
   * A place with a climate.
   *
   * @param climate the climate, in its own months
   * @return the place
   */
  public static LessonPlace in(Climate climate) {
    return new LessonPlace(climate);
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
    return new LessonPlace(climate.mirrored());
  }

  /** A healthy colony of the season with few mites, to be scaled: a copy. */
  ColonyLanes shapeOn(LocalDate date) {
    return shapes
        .computeIfAbsent(SeasonDay.of(date), day -> StartShape.at(climate, day, PARAMETERS))
        .copy();
  }
}
