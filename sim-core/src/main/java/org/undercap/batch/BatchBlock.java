package org.undercap.batch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.climate.Climate;
import org.undercap.climate.SeasonDay;
import org.undercap.ensemble.LaneOutcomes;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.SeasonDates;
import org.undercap.hive.ArrivalLevel;
import org.undercap.model.ColonyLanes;
import org.undercap.model.ModelException;
import org.undercap.model.ModelParameters;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;
import org.undercap.scenario.ChosenThreshold;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DailyDrivers;
import org.undercap.simulation.Intervention;
import org.undercap.simulation.Simulator;
import org.undercap.simulation.StartShape;
import org.undercap.treatment.Circumstances;
import org.undercap.treatment.Interventions;
import org.undercap.treatment.Treatment;

/**
 * Runs rows of a batch, those that can stand side by side as lanes of one block. It remembers the
 * shapes of some start states, and nothing else; one object may serve many threads.
 */
public final class BatchBlock {
  /** Rows that are best given at a time: enough lanes for the engine, few enough for memory. */
  public static final int ROWS = 128;

  /** Shapes that are remembered; a design may go through all days and places. */
  private static final int MOST_SHAPES = 64;

  private final DailyChoice choice;
  private final Map<ShapeKey, StartShape> shapes = new HashMap<>();

  /**
   * Prepares to run rows.
   *
   * @param choice what is kept of the days
   */
  public BatchBlock(DailyChoice choice) {
    this.choice = choice;
  }

  /**
   * Runs rows.
   *
   * @param rows the rows
   * @return what came of each, in their order; the same whatever other rows are given
   */
  public List<BatchResult> run(List<BatchRow> rows) {
    Map<SideBySide, List<Integer>> blocks = new LinkedHashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      blocks.computeIfAbsent(SideBySide.of(rows.get(i)), key -> new ArrayList<>()).add(i);
    }
    BatchResult[] results = new BatchResult[rows.size()];
    for (List<Integer> places : blocks.values()) {
      List<BatchResult> block = orEachAlone(places.stream().map(rows::get).toList());
      for (int i = 0; i < places.size(); i++) {
        results[places.get(i)] = block.get(i);
      }
    }
    return List.of(results);
  }

  /** One row that cannot be run must not spoil its neighbours. */
  private List<BatchResult> orEachAlone(List<BatchRow> rows) {
    try {
      return sideBySide(rows);
    } catch (IllegalArgumentException | ModelException e) {
      if (rows.size() == 1) {
        return List.of(BatchResult.failed(rows.get(0), String.valueOf(e.getMessage())));
      }
      int half = rows.size() / 2;
      List<BatchResult> results = new ArrayList<>(orEachAlone(rows.subList(0, half)));
      results.addAll(orEachAlone(rows.subList(half, rows.size())));
      return results;
    }
  }

  private List<BatchResult> sideBySide(List<BatchRow> rows) {
    BatchRow first = rows.get(0);
    ModelParameters parameters =
        ModelParameters.of(rows.stream().map(BatchRow::parameters).toList());
    SeasonDates dates =
        SeasonDates.of(first.climate(), first.start(), first.end(), first.parameters());
    LaneOutcomes outcomes =
        new LaneOutcomes(dates, first.start(), first.end(), limit(first), rows.size());
    DailyRows days = new DailyRows(choice, rows.size());
    Simulator.RunEnd end =
        new Simulator(parameters, drivers(rows))
            .run(
                start(rows),
                interventions(rows),
                choice.every() > 0
                    ? List.of(outcomes.observer(), days)
                    : List.of(outcomes.observer()));
    outcomes.close(end);
    List<BatchResult> results = new ArrayList<>();
    for (int lane = 0; lane < rows.size(); lane++) {
      results.add(
          new BatchResult(
              rows.get(lane),
              Optional.empty(),
              lostOn(first.start(), end.lostOn(lane)),
              told(outcomes, lane),
              days.of(lane)));
    }
    return results;
  }

  private static Optional<LocalDate> lostOn(LocalDate start, int day) {
    return day < 0 ? Optional.empty() : Optional.of(start.plusDays(day));
  }

  private static Map<Outcome, Double> told(LaneOutcomes outcomes, int lane) {
    Map<Outcome, Double> values = new EnumMap<>(Outcome.class);
    for (Outcome outcome : Outcome.values()) {
      outcomes.of(outcome, lane).ifPresent(value -> values.put(outcome, value));
    }
    return values;
  }

  private static double limit(BatchRow row) {
    return row.scenario()
        .threshold()
        .map(ChosenThreshold::mitesPer100Bees)
        .orElse(row.parameters().value(ParameterId.THRESHOLD_USUAL));
  }

  private ColonyLanes start(List<BatchRow> rows) {
    BatchRow first = rows.get(0);
    // Strengths of treatments shape nothing before the first treatment, and much is saved when the
    // rest agrees.
    ParameterSet base = first.scenario().parameters();
    double strength = base.value(ParameterId.TREATMENT_STRENGTH);
    ModelParameters before =
        ModelParameters.of(
            rows.stream()
                .map(row -> row.parameters().with(ParameterId.TREATMENT_STRENGTH, strength))
                .toList());
    ShapeKey key = new ShapeKey(first.climate(), SeasonDay.of(first.start()), base);
    ColonyLanes start = shape(key).of(before);
    for (int lane = 0; lane < rows.size(); lane++) {
      BatchRow row = rows.get(lane);
      start.setQueenQuality(lane, row.queenQuality());
      start.scaleTo(lane, row.bees(), row.broodCells(), row.mites());
    }
    return start;
  }

  private record ShapeKey(Climate climate, int seasonDay, ParameterSet base) {
    StartShape make() {
      return new StartShape(climate, seasonDay, base);
    }
  }

  private StartShape shape(ShapeKey key) {
    synchronized (shapes) {
      if (shapes.size() >= MOST_SHAPES && !shapes.containsKey(key)) {
        shapes.clear();
      }
      return shapes.computeIfAbsent(key, ShapeKey::make);
    }
  }

  private static DailyDrivers drivers(List<BatchRow> rows) {
    BatchRow first = rows.get(0);
    DailyDrivers drivers =
        DailyDrivers.of(first.climate(), first.start(), first.days(), date -> 0, rows.size());
    Map<ArrivalLevel, double[]> arriving = new LinkedHashMap<>();
    for (int lane = 0; lane < rows.size(); lane++) {
      BatchRow row = rows.get(lane);
      double[] mites = arriving.computeIfAbsent(row.arrivals(), level -> daily(level, row));
      for (int day = 0; day < drivers.days(); day++) {
        drivers.arriving(day)[lane] = mites[day];
        drivers.temperature(day)[lane] += row.warmer();
      }
    }
    return drivers;
  }

  private static double[] daily(ArrivalLevel level, BatchRow row) {
    double[] mites = new double[row.days()];
    for (int day = 0; day < mites.length; day++) {
      mites[day] = level.at(row.start().plusDays(day), row.climate().hemisphere());
    }
    return mites;
  }

  private static List<Intervention> interventions(List<BatchRow> rows) {
    BatchRow first = rows.get(0);
    Scenario scenario = first.scenario();
    Circumstances circumstances =
        new Circumstances(
            scenario.hive().openFloor(),
            scenario.humid(),
            scenario.resistance(),
            first.climate().eggs().max(),
            first.parameters());
    double[] strength =
        rows.stream()
            .mapToDouble(row -> row.parameters().value(ParameterId.TREATMENT_STRENGTH))
            .toArray();
    List<Intervention> result = new ArrayList<>();
    for (Intervention intervention :
        Interventions.of(scenario.stepsUnder(first.plan()), circumstances)) {
      result.add(
          intervention instanceof Treatment treatment
              ? treatment.withStrength(strength)
              : intervention);
    }
    return result;
  }
}
