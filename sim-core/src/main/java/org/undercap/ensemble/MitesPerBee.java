package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;

/** Mites on bees for each bee on some days, as a wash with perfect recovery would find. */
public final class MitesPerBee {
  private final Map<LocalDate, double[]> days = new TreeMap<>();

  MitesPerBee(Scenario scenario, List<LocalDate> dates, int members) {
    for (LocalDate date : dates) {
      if (date.isBefore(scenario.start()) || date.isAfter(scenario.end())) {
        throw new IllegalArgumentException(
            "day " + date + " must lie in the run, " + scenario.start() + " to " + scenario.end());
      }
      days.put(date, new double[members]);
    }
  }

  /**
   * The members on a day.
   *
   * @param date one of the days that were asked for
   * @return one value a member (mites per bee); 0 for a lost colony
   * @throws IllegalArgumentException if the day was not asked for
   */
  public double[] on(LocalDate date) {
    double[] members = days.get(date);
    if (members == null) {
      throw new IllegalArgumentException(date + " was not asked for, but " + days.keySet());
    }
    return members.clone();
  }

  DayObserver observer(int firstMember) {
    return new DayObserver() {
      @Override
      public void dayBegins(SimulationDay day) {
        days.forEach(
            (date, members) -> {
              if (date.toEpochDay() == day.epochDay()) {
                write(day, members, firstMember);
              }
            });
      }
    };
  }

  private static void write(SimulationDay day, double[] members, int first) {
    for (int lane = 0; lane < day.lanes(); lane++) {
      double bees = day.flows().of(Flow.ADULTS, lane);
      double mites = day.colony().total(Part.MITES_ON_BEES, lane);
      members[first + lane] = bees > 0 ? mites / bees : 0;
    }
  }
}
