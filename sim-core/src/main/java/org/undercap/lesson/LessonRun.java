package org.undercap.lesson;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.undercap.climate.Climate;
import org.undercap.climate.Sinusoid;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.hive.ArrivalLevel;
import org.undercap.model.ColonyLanes;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DailyTable;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.Simulator;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Course;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.Method;
import org.undercap.treatment.MethodCatalogue;
import org.undercap.treatment.PlanStep;

/**
 * One colony of a lesson, put together in a sentence. Usual weather, no arrivals and no treatment
 * unless said. Immutable: each word gives a new run, so that variants share their beginning.
 */
record LessonRun(
    LessonPlace place,
    ColonyLanes start,
    LocalDate from,
    OptionalDouble constantTemperature,
    ToDoubleFunction<LocalDate> arrivals,
    Map<String, Double> resistant,
    List<PlanStep> steps) {

  /** A usual colony of the season with so many mites in all. */
  static LessonRun of(LessonPlace place, LocalDate from, double mites) {
    ColonyLanes colony = place.shapeOn(from);
    colony.scaleMites(0, mites);
    return of(place, colony, from);
  }

  /** A colony in a known state. */
  static LessonRun of(LessonPlace place, ColonyLanes colony, LocalDate from) {
    return new LessonRun(
        place,
        colony,
        from,
        OptionalDouble.empty(),
        place.arrivals(),
        place.circumstances().resistantShares(),
        List.of());
  }

  static Method method(String id) {
    return MethodCatalogue.shipped().get(id);
  }

  /** The same daily mean outside temperature on all days (C). */
  LessonRun at(double celsius) {
    return new LessonRun(
        place, start, from, OptionalDouble.of(celsius), arrivals, resistant, steps);
  }

  /** A shipped level of arrivals on the days from one date to another. */
  LessonRun arriving(String level, LocalDate first, LocalDate last) {
    ArrivalLevel shipped = ArrivalCatalogue.shipped().get(level);
    return new LessonRun(
        place,
        start,
        from,
        constantTemperature,
        date ->
            date.isBefore(first) || date.isAfter(last)
                ? 0
                : shipped.at(date, place.climate().hemisphere()),
        resistant,
        steps);
  }

  /** Shares of resistant mites by class of substances. */
  LessonRun resisting(Map<String, Double> shares) {
    return new LessonRun(place, start, from, constantTemperature, arrivals, shares, steps);
  }

  /** Something that the keeper does. */
  LessonRun doing(List<? extends PlanStep> more) {
    List<PlanStep> all = new ArrayList<>(steps);
    all.addAll(more);
    return new LessonRun(place, start, from, constantTemperature, arrivals, resistant, all);
  }

  LessonRun doing(PlanStep step) {
    return doing(List.of(step));
  }

  /** One application. */
  LessonRun treat(String method, LocalDate date) {
    return treat(method, new Course(1, 0), date);
  }

  /** Several applications. */
  LessonRun treat(String method, Course course, LocalDate first) {
    return doing(course.of(method(method), first));
  }

  /** The course that users usually give. */
  LessonRun treatAsUsual(String method, LocalDate first) {
    return treat(method, method(method).usual().course(), first);
  }

  /** Runs to the end of a day; observers see every day. */
  LessonCourse until(LocalDate last, DayObserver... observers) {
    Climate climate = place.climate();
    Climate weather =
        constantTemperature.isPresent()
            ? climate.withTemperature(new Sinusoid(constantTemperature.getAsDouble(), 0, 0))
            : climate;
    int days = (int) ChronoUnit.DAYS.between(from, last) + 1;
    DailyDrivers drivers = DailyDrivers.of(weather, from, days, arrivals, 1);
    DailyTable table = DailyTable.of(drivers, 0);
    List<DayObserver> watching = new ArrayList<>(List.of(observers));
    watching.add(table);
    Circumstances usual = place.circumstances();
    Circumstances circumstances =
        new Circumstances(
            usual.openFloor(), usual.humid(), resistant, usual.peakEggs(), usual.parameters());
    new Simulator(place.parameters(), drivers)
        .run(start, Interventions.of(steps, circumstances), watching);
    return new LessonCourse(table);
  }
}
