package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.IntConsumer;
import org.undercap.model.ModelException;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.DayObserver;
import org.undercap.simulation.SimulationDay;
import org.undercap.simulation.Simulator;

/**
 * Runs the plans of a scenario over members that differ in all that is not known. The results are
 * the same for any number of threads. {@link Trials} runs many plans for their outcomes alone.
 */
public final class Ensemble {
  private final Members members;

  /**
   * An ensemble of a scenario.
   *
   * @param scenario place, colony and what is known
   * @param belief mites on the first day
   * @param settings members, seed and threads
   */
  public Ensemble(Scenario scenario, MiteBelief belief, EnsembleSettings settings) {
    members = Members.of(scenario, belief, settings);
  }

  /**
   * The days that outcomes look at.
   *
   * @return the dates
   */
  public SeasonDates dates() {
    return members.dates();
  }

  /**
   * Runs plans.
   *
   * @param plans the plans, each with the feeding of the scenario
   * @param washDays days of the run on which mites per bee are written down
   * @param progress told the number of members done, from any thread, in any order
   * @return what came of each, in their order
   * @throws ModelException if the model leaves its range
   * @throws IllegalArgumentException if a day lies outside the run, or no colony of this season and
   *     place can be scaled to the facts
   */
  public List<PlanResult> run(List<Plan> plans, List<LocalDate> washDays, IntConsumer progress) {
    List<PlanResult> results =
        plans.stream().map(plan -> PlanResult.empty(plan, members, washDays)).toList();
    Queue<List<CurveBands>> workers = new ConcurrentLinkedQueue<>();
    members.work(
        members.blocks(),
        () -> {
          List<CurveBands> bands = new ArrayList<>();
          plans.forEach(plan -> bands.add(new CurveBands(members.scenario().days())));
          workers.add(bands);
          return number -> {
            MemberBlock block = members.block(number);
            for (int plan = 0; plan < plans.size(); plan++) {
              run(block, results.get(plan), bands.get(plan));
            }
            progress.accept(block.lanes());
          };
        });
    for (List<CurveBands> bands : workers) {
      for (int plan = 0; plan < plans.size(); plan++) {
        results.get(plan).bands().add(bands.get(plan));
      }
    }
    return results;
  }

  private static void run(MemberBlock block, PlanResult result, CurveBands bands) {
    Simulator.RunEnd end =
        block.run(
            result.plan(),
            result.outcomes(),
            List.of(bands.observer(block.lanes()), result.washes().observer(block.first())));
    bands.emptyFrom(end.days(), block.lanes());
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
    members.work(
        members.blocks(),
        () ->
            number -> {
              MemberBlock block = members.block(number);
              DayObserver observer =
                  new DayObserver() {
                    @Override
                    public void dayBegins(SimulationDay day) {
                      watch.dayBegins(day, block.first());
                    }
                  };
              block.run(plan, List.of(observer));
            });
  }
}
