package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import org.undercap.model.Flow;
import org.undercap.model.ModelException;
import org.undercap.model.Part;
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
    watch(
        plan,
        (day, first) -> {
          if (day.epochDay() == date.toEpochDay()) {
            for (int lane = 0; lane < day.lanes(); lane++) {
              double bees = day.flows().of(Flow.ADULTS, lane);
              double mites = day.colony().total(Part.MITES_ON_BEES, lane);
              result[first + lane] = bees > 0 ? mites / bees : 0;
            }
          }
        });
    return result;
  }

  /** Sees members at the start of each day. */
  @FunctionalInterface
  public interface MemberWatch {
    /**
     * Sees some members.
     *
     * @param day the day, with as many lanes as members
     * @param firstMember number of the member in the first lane
     */
    void dayBegins(SimulationDay day, int firstMember);
  }

  /**
   * Runs a plan and looks at the members day by day. Colonies that are lost stay empty, and days
   * after all members of a block are lost are not seen.
   *
   * @param plan the plan, with the feeding of the scenario
   * @param watch told of each day, from any thread, each member by one thread
   */
  public void watch(Plan plan, MemberWatch watch) {
    inBlocks(
        (first, count) -> {
          MemberBlock block = new MemberBlock(scenario, belief, draws, first, count);
          DayObserver observer =
              new DayObserver() {
                @Override
                public void dayBegins(SimulationDay day) {
                  watch.dayBegins(day, first);
                }
              };
          block
              .simulator()
              .run(
                  block.start(), block.interventions(scenario.stepsUnder(plan)), List.of(observer));
        });
  }

  private void runBlock(List<PlanResult> results, int first, int count) {
    MemberBlock block = new MemberBlock(scenario, belief, draws, first, count);
    for (PlanResult result : results) {
      OutcomeObserver outcomes =
          new OutcomeObserver(
              dates, scenario.end(), Trials.limit(scenario), result.outcomes(), first, count);
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
    Parallel.run(blocks, settings.threads());
  }
}
