package org.undercap.ensemble;

import java.util.EnumMap;
import java.util.Map;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;

/**
 * How the daily curves of a plan spread over the members. A lost colony has no bees; its mites do
 * not count.
 */
public final class CurveBands {
  private final Map<Series, LogHistogram[]> days = new EnumMap<>(Series.class);

  CurveBands(int length) {
    for (Series series : Series.values()) {
      LogHistogram[] histograms = new LogHistogram[length];
      for (int day = 0; day < length; day++) {
        histograms[day] = new LogHistogram();
      }
      days.put(series, histograms);
    }
  }

  /**
   * Number of days.
   *
   * @return days
   */
  public int days() {
    return days.get(Series.ADULTS).length;
  }

  /**
   * A quantile of each day over the members.
   *
   * @param series which curve
   * @param share share of the members below (fraction, 0 to 1)
   * @return one value a day, known to 2 %; unit as {@link Series} says; NaN if no member has it
   */
  public double[] quantile(Series series, double share) {
    LogHistogram[] histograms = days.get(series);
    double[] result = new double[histograms.length];
    for (int day = 0; day < result.length; day++) {
      result[day] = histograms[day].quantile(share);
    }
    return result;
  }

  void add(CurveBands other) {
    days.forEach(
        (series, mine) -> {
          LogHistogram[] theirs = other.days.get(series);
          for (int day = 0; day < mine.length; day++) {
            mine[day].add(theirs[day]);
          }
        });
  }

  /** Counts the days after all colonies of a block were lost. */
  void emptyFrom(int firstDay, int lanes) {
    LogHistogram[] adults = days.get(Series.ADULTS);
    for (int day = firstDay; day < adults.length; day++) {
      for (int lane = 0; lane < lanes; lane++) {
        adults[day].add(0);
      }
    }
  }

  /** Fills these bands with a block of members while they run. */
  DayObserver observer(int lanes) {
    return new DayObserver() {
      @Override
      public void dayBegins(SimulationDay day) {
        addDay(day, lanes);
      }
    };
  }

  private void addDay(SimulationDay day, int lanes) {
    LogHistogram bees = of(Series.ADULTS, day);
    LogHistogram mitesOnBees = of(Series.MITES_ON_BEES, day);
    LogHistogram mitesInCells = of(Series.MITES_IN_CELLS, day);
    LogHistogram per100 = of(Series.MITES_PER_100_BEES, day);
    double[] adults = day.flows().of(Flow.ADULTS);
    double[] mites = day.flows().of(Flow.MITES_BEFORE);
    for (int lane = 0; lane < lanes; lane++) {
      bees.add(adults[lane]);
      if (!day.isLost(lane)) {
        double onBees = day.colony().total(Part.MITES_ON_BEES, lane);
        mitesOnBees.add(onBees);
        mitesInCells.add(Math.max(0, mites[lane] - onBees));
        per100.add(100 * onBees / adults[lane]);
      }
    }
  }

  private LogHistogram of(Series series, SimulationDay day) {
    return days.get(series)[day.index()];
  }
}
