package org.undercap.simulation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.undercap.model.DayFlows;
import org.undercap.model.Flow;

/**
 * The daily account of the mites of one colony: what was there, what came and what went. Every day
 * {@code before + born + arrived = after + lost at emergence + died naturally + killed on bees +
 * killed in cells + removed}; the engine stops a run whose account does not close to 1e-6.
 */
public final class MiteLedger implements DayObserver {
  private final int lane;
  private final List<Entry> entries = new ArrayList<>();

  /**
   * An empty account, to be given to the simulator as an observer.
   *
   * @param lane the colony
   */
  public MiteLedger(int lane) {
    this.lane = lane;
  }

  /**
   * The account of a day (mites).
   *
   * @param date the day
   * @param before mites at the start of the day
   * @param born daughters born
   * @param arrived mites from other colonies
   * @param lostAtEmergence mites that fell when bees emerged
   * @param diedNaturally mites that died on the bees by themselves
   * @param killedOnBees mites killed on the bees by treatments
   * @param killedInCells mites killed under the cappings by treatments
   * @param removed mites taken out by the keeper
   * @param after mites at the end of the day
   */
  public record Entry(
      LocalDate date,
      double before,
      double born,
      double arrived,
      double lostAtEmergence,
      double diedNaturally,
      double killedOnBees,
      double killedInCells,
      double removed,
      double after) {

    /**
     * By how much the account does not close.
     *
     * @return what came less what went (mites); 0 but for rounding
     */
    public double difference() {
      return before
          + born
          + arrived
          - (after + lostAtEmergence + diedNaturally + killedOnBees + killedInCells + removed);
    }
  }

  @Override
  public void dayEnds(SimulationDay day) {
    if (day.isLost(lane) && isOver(day)) {
      return;
    }
    DayFlows flows = day.flows();
    entries.add(
        new Entry(
            day.date(),
            flows.of(Flow.MITES_BEFORE, lane),
            flows.of(Flow.BORN, lane),
            flows.of(Flow.ARRIVED, lane),
            flows.of(Flow.LOST_AT_EMERGENCE, lane),
            flows.of(Flow.DIED_NATURALLY, lane),
            flows.of(Flow.KILLED_ON_BEES, lane),
            flows.of(Flow.KILLED_IN_CELLS, lane),
            flows.of(Flow.REMOVED, lane),
            flows.of(Flow.MITES_AFTER, lane)));
  }

  /** A colony is buried on the evening on which it is lost; the days after have nothing to tell. */
  private boolean isOver(SimulationDay day) {
    return day.flows().of(Flow.ADULTS, lane) == 0;
  }

  /**
   * The days.
   *
   * @return one entry a day, until the colony is lost
   */
  public List<Entry> entries() {
    return List.copyOf(entries);
  }
}
