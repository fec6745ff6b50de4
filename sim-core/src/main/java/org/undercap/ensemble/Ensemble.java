package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;
import org.undercap.model.Flow;
import org.undercap.model.ModelException;
import org.undercap.model.Part;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;
import org.undercap.simulation.Simulator;

/**
 * Runs the plans of a scenario over members that differ in all that is not known. Members are
 * worked on in blocks of a fixed size, so that the results are the same for any number of threads.
 */
public final class Ensemble {
  private static final int BLOCK = 64;
  private final Scenario scenario;
  private final MiteBelief belief;
  private final EnsembleSettings settings;
  private final SeasonDates dates;
  private final Draws draws;

  /**
   * An ensemble of a scenario.
   *
   * @param scenario place, colony and what is known
   * @param belief mites on the first day
   * @param settings members, seed and threads
   */
  public Ensemble(Scenario scenario, MiteBelief belief, EnsembleSettings settings) {
    this.scenario = scenario;
    this.belief = belief;
    this.settings = settings;
    dates =
        SeasonDates.of(scenario.climate(), scenario.start(), scenario.end(), scenario.parameters());
    draws = new Draws(scenario, settings.seed());
  }

  /**
   * The days that outcomes look at.
   *
   * @return the dates
   */
  public SeasonDates dates() {
    return dates;
  }

  /**
   * Runs plans.
   *
   * @param plans the plans, each with the feeding of the scenario
   * @param progress told the number of members done, from any thread, in any order
   * @return what came of each, in their order
   * @throws ModelException if the model leaves its range
   * @throws IllegalArgumentException if no colony of this season and place can be scaled to the
   *     facts
   */
  public List<PlanResult> run(List<Plan> plans, IntConsumer progress) {
    List<PlanResult> results = new ArrayList<>();
    for (Plan plan : plans) {
      results.add(
          new PlanResult(
              plan, new OutcomeTable(settings.members()), new CurveBands(scenario.days())));
    }
    inBlocks(
        (first, count) -> {
          runBlock(results, first, count);
          progress.accept(count);
        });
    return List.copyOf(results);
  }

  /**
   * Mites on bees for each bee on a day, as a wash with perfect recovery would find.
   *
   * @param plan the plan, with the feeding of the scenario
   * @param date a day of the run
   * @return one value a member (mites per bee); 0 for a lost colony
   * @throws IllegalArgumentException if the day lies outside the run
   */
  public double[] mitesPerBee(Plan plan, LocalDate date) {
    if (date.isBefore(scenario.start()) || date.isAfter(scenario.end())) {
      throw new IllegalArgumentException(
          "day " + date + " must lie in the run, " + scenario.start() + " to " + scenario.end());
    }
    double[] result = new double[settings.members()];
    inBlocks(
        (first, count) -> {
          MemberBlock block = new MemberBlock(scenario, belief, draws, first, count);
          DayObserver observer =
              new DayObserver() {
                @Override
                public void dayBegins(SimulationDay day) {
                  if (day.epochDay() == date.toEpochDay()) {
                    for (int lane = 0; lane < count; lane++) {
                      double bees = day.flows().of(Flow.ADULTS, lane);
                      double mites = day.colony().total(Part.MITES_ON_BEES, lane);
                      result[first + lane] = bees > 0 ? mites / bees : 0;
                    }
                  }
                }
              };
          block
              .simulator()
              .run(
                  block.start(), block.interventions(scenario.stepsUnder(plan)), List.of(observer));
        });
    return result;
  }

  private void runBlock(List<PlanResult> results, int first, int count) {
    MemberBlock block = new MemberBlock(scenario, belief, draws, first, count);
    for (PlanResult result : results) {
      OutcomeObserver outcomes =
          new OutcomeObserver(dates, scenario.end(), limit(), result.outcomes(), first, count);
      CurveBands bands = new CurveBands(scenario.days());
      List<DayObserver> observers = List.of(outcomes, bands.observer(count));
      Simulator.RunEnd end =
          block
              .simulator()
              .run(
                  block.start(),
                  block.interventions(scenario.stepsUnder(result.plan())),
                  observers);
      outcomes.close();
      bands.emptyFrom(end.days(), count);
      result.bands().add(bands);
    }
  }

  private double limit() {
    return scenario
        .threshold()
        .map(threshold -> threshold.mitesPer100Bees())
        .orElse(scenario.parameters().value(ParameterId.THRESHOLD_USUAL));
  }

  /** Work on some members. */
  @FunctionalInterface
  private interface BlockWork {
    void on(int first, int count);
  }

  private void inBlocks(BlockWork work) {
    List<Runnable> blocks = new ArrayList<>();
    for (int first = 0; first < settings.members(); first += BLOCK) {
      int from = first;
      int count = Math.min(BLOCK, settings.members() - first);
      blocks.add(() -> work.on(from, count));
    }
    if (settings.threads() == 1) {
      blocks.forEach(Runnable::run);
    } else {
      runAll(blocks);
    }
  }

  private void runAll(List<Runnable> blocks) {
    ExecutorService pool =
        Executors.newFixedThreadPool(Math.min(settings.threads(), blocks.size()));
    try {
      List<Future<?>> running = new ArrayList<>();
      blocks.forEach(block -> running.add(pool.submit(block)));
      for (Future<?> done : running) {
        done.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}
