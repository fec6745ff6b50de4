package org.undercap.lesson;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.undercap.model.ColonyLanes;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;

/**
 * A treatment day by day: the mites on the bees, and those in each age of the sealed brood.
 *
 * @param treated day of the treatment
 * @param days the days, beginning some before the treatment
 */
public record TreatmentFilm(LocalDate treated, List<Day> days) {
  private static final int BEFORE = 3;
  private static final int AFTER = 24;

  /**
   * Copies the list.
   *
   * @param treated day of the treatment
   * @param days at least one
   */
  public TreatmentFilm {
    days = List.copyOf(days);
  }

  /**
   * One day, at its end.
   *
   * @param day days since the treatment (days); negative before it
   * @param onBees mites on bees (mites)
   * @param killed mites killed on the day (mites)
   * @param adults adult workers (bees)
   * @param inCells mites in worker cells by days since sealing, youngest first (mites)
   */
  public record Day(int day, double onBees, double killed, double adults, List<Double> inCells) {
    /**
     * Copies the list.
     *
     * @param day days since the treatment (days)
     * @param onBees mites on bees (mites)
     * @param killed mites killed on the day (mites)
     * @param adults adult workers (bees)
     * @param inCells mites by days since sealing (mites)
     */
    public Day {
      inCells = List.copyOf(inCells);
    }
  }

  /**
   * One oxalic treatment late in summer.
   *
   * @param place where the colony stands
   * @return the film
   */
  public static TreatmentFilm of(LessonPlace place) {
    LocalDate treated = place.on(Month.AUGUST, 15);
    LocalDate from = treated.minusDays(BEFORE);
    List<Day> days = new ArrayList<>();
    DayObserver camera =
        new DayObserver() {
          @Override
          public void dayEnds(SimulationDay day) {
            days.add(frame(day));
          }
        };
    double mites = SetUps.number("trial.mites");
    double grown = LessonRun.of(place, from, mites).until(treated).mites(treated);
    // So that the day of the treatment begins with as many as in the other lessons.
    LessonRun.of(place, from, mites * mites / grown)
        .treat(TreatmentLessons.VAPOUR, treated)
        .until(treated.plusDays(AFTER), camera);
    return new TreatmentFilm(treated, days);
  }

  private static Day frame(SimulationDay day) {
    ColonyLanes colony = day.colony();
    List<Double> inCells = new ArrayList<>();
    for (int age = 0; age < colony.mothersInWorkerCells().ages(); age++) {
      inCells.add(colony.mothersInWorkerCells().row(age)[0]);
    }
    return new Day(
        day.index() - BEFORE,
        colony.total(Part.MITES_ON_BEES, 0),
        day.flows().of(Flow.KILLED_ON_BEES, 0),
        colony.adults(0),
        inCells);
  }
}
