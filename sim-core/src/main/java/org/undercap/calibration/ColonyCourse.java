package org.undercap.calibration;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelParameters;
import org.undercap.model.SideBySide;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.SimulationDay;
import org.undercap.simulation.Simulator;
import org.undercap.treatment.Treatment;

/** Runs one colony under many parameters side by side and sums up what its observations see. */
final class ColonyCourse {
  private static final int LANES = 64;

  private final ObservedColony colony;
  private final List<Observation> observations;
  private final int days;

  ColonyCourse(ObservedColony colony) {
    this.colony = colony;
    observations = Observation.of(colony);
    long last = 0;
    for (Observation observation : observations) {
      last = Math.max(last, day(observation.date()));
    }
    days = (int) last + 1;
  }

  private long day(LocalDate date) {
    return ChronoUnit.DAYS.between(colony.start().date(), date);
  }

  ObservedColony colony() {
    return colony;
  }

  List<Observation> observations() {
    return observations;
  }

  /** Sums of all observations, one row a set. */
  double[][] sums(StartShapes shapes, double[] mites) {
    double[][] sums = new double[shapes.sets().size()][observations.size()];
    for (List<Integer> group : SideBySide.groups(shapes.sets(), LANES)) {
      run(group, shapes, mites, sums);
    }
    return sums;
  }

  private void run(List<Integer> group, StartShapes shapes, double[] mites, double[][] sums) {
    List<ParameterSet> mine = group.stream().map(shapes.sets()::get).toList();
    ColonyLanes start = shapes.of(colony.start(), group);
    for (int lane = 0; lane < mine.size(); lane++) {
      start.setQueenQuality(lane, colony.start().queenQuality());
      start.scaleTo(
          lane, colony.start().adults(), colony.start().broodCells(), mites[group.get(lane)]);
    }
    DailyDrivers drivers =
        DailyDrivers.of(
            colony.start().climate(), colony.start().date(), days, colony.arrivals(), mine.size());
    new Simulator(ModelParameters.of(mine), drivers)
        .run(start, done(mine), List.of(new Onlooker(group, sums)));
  }

  /** What was done, with the strength of treatments that each set of parameters says. */
  private List<Intervention> done(List<ParameterSet> sets) {
    double[] strengths =
        sets.stream().mapToDouble(p -> p.value(ParameterId.TREATMENT_STRENGTH)).toArray();
    List<Intervention> done = new ArrayList<>();
    for (Intervention intervention : colony.done()) {
      done.add(
          intervention instanceof Treatment treatment
              ? treatment.withStrength(strengths)
              : intervention);
    }
    return done;
  }

  private final class Onlooker implements DayObserver {
    private final List<Integer> group;
    private final double[][] sums;
    private final long[] from = new long[observations.size()];
    private final long[] last = new long[observations.size()];

    Onlooker(List<Integer> group, double[][] sums) {
      this.group = group;
      this.sums = sums;
      for (int i = 0; i < from.length; i++) {
        from[i] = day(observations.get(i).from());
        last[i] = day(observations.get(i).date());
      }
    }

    @Override
    public void dayBegins(SimulationDay day) {
      look(day, true);
    }

    @Override
    public void dayEnds(SimulationDay day) {
      look(day, false);
    }

    private void look(SimulationDay day, boolean start) {
      for (int i = 0; i < from.length; i++) {
        if (day.index() < from[i] || day.index() > last[i]) {
          continue;
        }
        Observation observation = observations.get(i);
        for (int lane = 0; lane < group.size(); lane++) {
          sums[group.get(lane)][i] +=
              start ? observation.atStart(day, lane) : observation.atEnd(day, lane);
        }
      }
    }
  }
}
