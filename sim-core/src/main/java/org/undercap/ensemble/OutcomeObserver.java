package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.undercap.model.DayFlows;
import org.undercap.model.Flow;
import org.undercap.model.Part;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;
import org.undercap.simulation.Simulator;

/**
 * Adds up the outcomes of a block of members while they run. What only a living colony has stays
 * NaN in one that is lost.
 */
final class OutcomeObserver implements DayObserver {
  private static final List<Outcome> COUNTS =
      List.of(
          Outcome.MITES_PER_100_FIRST, Outcome.MITES_PER_100_SECOND, Outcome.MITES_PER_100_LAST);
  private static final List<Outcome> DAYS_ABOVE =
      List.of(Outcome.DAYS_ABOVE_BEFORE_MIDWINTER, Outcome.DAYS_ABOVE_AFTER_MIDWINTER);

  private final int lanes;
  private final long firstDay;
  private final long from;
  private final long until;
  private final long midwinter;
  private final long endOfWinter;
  private final long lastDay;
  private final long[] countDays;
  private final double limit;
  private final double[] opened;
  private final double[] parasitised;
  private final double[] per100;
  private final OutcomeTable table;
  private final int firstMember;

  OutcomeObserver(Members members, OutcomeTable table, int firstMember, int lanes) {
    this(
        members.dates(),
        members.scenario().start(),
        members.scenario().end(),
        members.scenario().limit(),
        table,
        firstMember,
        lanes);
  }

  OutcomeObserver(
      SeasonDates dates,
      LocalDate start,
      LocalDate end,
      double limit,
      OutcomeTable table,
      int firstMember,
      int lanes) {
    this.lanes = lanes;
    this.table = table;
    this.firstMember = firstMember;
    this.limit = limit;
    firstDay = start.toEpochDay();
    from = dates.winterBeesFrom().toEpochDay();
    until = dates.winterBeesUntil().toEpochDay();
    midwinter = dates.midwinter().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE);
    endOfWinter = dates.endOfWinter().map(LocalDate::toEpochDay).orElse(Long.MAX_VALUE);
    lastDay = end.toEpochDay();
    countDays = dates.countDates().stream().mapToLong(LocalDate::toEpochDay).toArray();
    opened = new double[lanes];
    parasitised = new double[lanes];
    per100 = new double[lanes];
    for (Outcome daysAbove : DAYS_ABOVE) {
      Arrays.fill(of(daysAbove), firstMember, firstMember + lanes, 0);
    }
  }

  private double[] of(Outcome outcome) {
    return table.values(outcome);
  }

  @Override
  public void dayBegins(SimulationDay day) {
    long today = day.epochDay();
    double[] adults = day.flows().of(Flow.ADULTS);
    double[] above = of(DAYS_ABOVE.get(today < midwinter ? 0 : 1));
    for (int lane = 0; lane < lanes; lane++) {
      per100[lane] = 100 * day.colony().total(Part.MITES_ON_BEES, lane) / adults[lane];
      above[firstMember + lane] += per100[lane] > limit ? 1 : 0;
    }
    if (today == firstDay) {
      writePer100(Outcome.MITES_PER_100_START);
    }
    for (int i = 0; i < countDays.length; i++) {
      if (countDays[i] == today) {
        writePer100(COUNTS.get(i));
      }
    }
    if (today == midwinter) {
      atMidwinter(day, adults);
    }
    if (today == endOfWinter) {
      System.arraycopy(adults, 0, of(Outcome.BEES_AFTER_WINTER), firstMember, lanes);
    }
  }

  /** A colony without bees has none: NaN. */
  private void writePer100(Outcome outcome) {
    System.arraycopy(per100, 0, of(outcome), firstMember, lanes);
  }

  private void atMidwinter(SimulationDay day, double[] adults) {
    for (int lane = 0; lane < lanes; lane++) {
      if (!day.isLost(lane)) {
        double weak = day.colony().total(Part.WEAKENED_ADULTS, lane);
        of(Outcome.WEAKENED_AT_MIDWINTER)[firstMember + lane] = weak / adults[lane];
        of(Outcome.MITES_AT_MIDWINTER)[firstMember + lane] = day.colony().mites(lane);
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
  }

  private void add(DayFlows flows, Flow flow, Outcome outcome) {
    double[] today = flows.of(flow);
    double[] sum = of(outcome);
    for (int lane = 0; lane < lanes; lane++) {
      sum[firstMember + lane] += today[lane];
    }
  }

  /**
   * To be called after the run. A colony that is lost before midwinter has no winter bees: all are
   * counted as harmed.
   */
  void close(Simulator.RunEnd end) {
    for (int lane = 0; lane < lanes; lane++) {
      int member = firstMember + lane;
      double harm = opened[lane] > 0 ? parasitised[lane] / opened[lane] : 0;
      if (end.lostOn(lane) >= 0) {
        of(Outcome.LOST)[member] = 1;
        harm = firstDay + end.lostOn(lane) < midwinter ? 1 : harm;
        of(Outcome.MITES_AT_END)[member] = Double.NaN;
        for (Outcome daysAbove : DAYS_ABOVE) {
          of(daysAbove)[member] = Double.NaN;
        }
      }
      of(Outcome.WINTER_BROOD_PARASITISED)[member] = harm;
    }
  }
}
