package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.Simulator;

/** The outcomes of colonies that are run side by side without an ensemble around them. */
public final class LaneOutcomes {
  private final SeasonDates dates;
  private final OutcomeTable table;
  private final OutcomeObserver observer;

  /**
   * Prepares to watch colonies.
   *
   * @param dates the days that outcomes look at
   * @param start first day of the run
   * @param end last day of the run
   * @param limit limit above which days are counted (mites per 100 bees)
   * @param lanes number of colonies
   */
  public LaneOutcomes(SeasonDates dates, LocalDate start, LocalDate end, double limit, int lanes) {
    this.dates = dates;
    table = new OutcomeTable(lanes);
    observer = new OutcomeObserver(dates, start, end, limit, table, 0, lanes);
  }

  /**
   * What must watch the run.
   *
   * @return an observer
   */
  public DayObserver observer() {
    return observer;
  }

  /**
   * To be called once after the run.
   *
   * @param end how it ended
   */
  public void close(Simulator.RunEnd end) {
    observer.close(end);
  }

  /**
   * One outcome of one colony.
   *
   * @param outcome which
   * @param lane the colony
   * @return its value, if the run is long enough to tell it and the colony lived to have it; unit
   *     as {@link Outcome} says
   */
  public OptionalDouble of(Outcome outcome, int lane) {
    double value = table.values(outcome)[lane];
    return dates.tells(outcome) && !Double.isNaN(value)
        ? OptionalDouble.of(value)
        : OptionalDouble.empty();
  }
}
