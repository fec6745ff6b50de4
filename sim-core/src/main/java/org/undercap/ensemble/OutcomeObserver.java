package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.List;
import org.undercap.model.DayFlows;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;

/** Adds up the outcomes of a block of members while they run. */
final class OutcomeObserver implements DayObserver {
  private final int lanes;
  private final long from;
  private final long until;
  private final long midwinter;
  private final long endOfWinter;
  private final long lastDay;
  private final long[] countDays;
  private final double limit;
  private final double[] opened;
  private final double[] parasitised;
  private final OutcomeTable table;
  private final int firstMember;

  OutcomeObserver(
      SeasonDates dates,
      LocalDate end,
      double limit,
      OutcomeTable table,
      int firstMember,
      int lanes) {
    this.lanes = lanes;
    this.table = table;
    this.firstMember = firstMember;
    this.limit = limit;
    from = dates.winterBeesFrom().toEpochDay();
    until = dates.winterBeesUntil().toEpochDay();
    midwinter = dates.midwinter().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE);
    endOfWinter = dates.endOfWinter().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE);
    lastDay = end.toEpochDay();
    countDays = dates.countDates().stream().mapToLong(LocalDate::toEpochDay).toArray();
    opened = new double[lanes];
    parasitised = new double[lanes];
  }

  private double[] of(Outcome outcome) {
    return table.values(outcome);
  }

  @Override
  public void dayBegins(SimulationDay day) {
    long today = day.epochDay();
    List<Outcome> counts =
        List.of(
            Outcome.MITES_PER_100_FIRST, Outcome.MITES_PER_100_SECOND, Outcome.MITES_PER_100_LAST);
    double[] aboveLimit =
        of(
            today < midwinter
                ? Outcome.DAYS_ABOVE_BEFORE_MIDWINTER
                : Outcome.DAYS_ABOVE_AFTER_MIDWINTER);
    double[] adults = day.flows().of(Flow.ADULTS);
    for (int lane = 0; lane < lanes; lane++) {
      double bees = adults[lane];
      double per100 = bees > 0 ? 100 * day.colony().total(Part.MITES_ON_BEES, lane) / bees : 0;
      aboveLimit[firstMember + lane] += per100 > limit ? 1 : 0;
      if (day.index() == 0) {
        of(Outcome.MITES_PER_100_START)[firstMember + lane] = per100;
      }
      for (int i = 0; i < countDays.length; i++) {
        if (countDays[i] == today) {
          of(counts.get(i))[firstMember + lane] = per100;
        }
      }
      if (today == midwinter) {
        double weak = day.colony().total(Part.WEAKENED_ADULTS, lane);
        of(Outcome.WEAKENED_AT_MIDWINTER)[firstMember + lane] = bees > 0 ? weak / bees : 1;
        of(Outcome.MITES_AT_MIDWINTER)[firstMember + lane] = day.colony().mites(lane);
      }
      if (today == endOfWinter) {
        of(Outcome.BEES_AFTER_WINTER)[firstMember + lane] = bees;
      }
    }
  }

  @Override
  public void dayEnds(SimulationDay day) {
    DayFlows flows = day.flows();
    add(flows, Flow.KILLED_ON_BEES, Outcome.MITES_KILLED);
    add(flows, Flow.KILLED_IN_CELLS, Outcome.MITES_KILLED);
    add(flows, Flow.REMOVED, Outcome.MITES_REMOVED);
    add(flows, Flow.DIED_NATURALLY, Outcome.MITES_DIED);
    add(flows, Flow.LOST_AT_EMERGENCE, Outcome.MITES_DIED);
    add(flows, Flow.ARRIVED, Outcome.MITES_ARRIVED);
    add(flows, Flow.ADULTS_KILLED, Outcome.BEES_KILLED);
    long today = day.epochDay();
    if (today >= from && today <= until) {
      double[] cells = flows.of(Flow.OPENED_CELLS);
      double[] share = flows.of(Flow.PARASITISED_SHARE);
      for (int lane = 0; lane < lanes; lane++) {
        opened[lane] += cells[lane];
        parasitised[lane] += cells[lane] * share[lane];
      }
    }
    if (today == lastDay) {
      System.arraycopy(flows.of(Flow.MITES_AFTER), 0, of(Outcome.MITES_AT_END), firstMember, lanes);
    }
    for (int lane = 0; lane < lanes; lane++) {
      if (day.isLost(lane)) {
        of(Outcome.LOST)[firstMember + lane] = 1;
      }
    }
  }

  private void add(DayFlows flows, Flow flow, Outcome outcome) {
    double[] today = flows.of(flow);
    double[] sum = of(outcome);
    for (int lane = 0; lane < lanes; lane++) {
      sum[firstMember + lane] += today[lane];
    }
  }

  /**
   * To be called after the run. A colony that was lost has no winter bees: what it did not reach
   * counts as the worst.
   */
  void close() {
    double[] share = of(Outcome.WINTER_BROOD_PARASITISED);
    double[] lost = of(Outcome.LOST);
    for (int lane = 0; lane < lanes; lane++) {
      share[firstMember + lane] =
          opened[lane] > 0 ? parasitised[lane] / opened[lane] : lost[firstMember + lane];
      if (lost[firstMember + lane] > 0
          && midwinter != Long.MAX_VALUE
          && of(Outcome.BEES_AFTER_WINTER)[firstMember + lane] == 0) {
        of(Outcome.WEAKENED_AT_MIDWINTER)[firstMember + lane] =
            Math.max(of(Outcome.WEAKENED_AT_MIDWINTER)[firstMember + lane], 1);
      }
    }
  }
}
