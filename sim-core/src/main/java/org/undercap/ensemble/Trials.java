package org.undercap.ensemble;

import java.util.ArrayList;
import java.util.List;
import org.undercap.model.ModelException;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/**
 * Many plans tried on the same members, for their outcomes alone. Members and their draws are those
 * of {@link Ensemble}, made once for all calls; plans are spread over the threads.
 */
public final class Trials {
  private static final int BLOCK = 64;

  /** Plans that a thread takes at a time. */
  private static final int PLANS = 16;

  private final Scenario scenario;
  private final EnsembleSettings settings;
  private final SeasonDates dates;
  private final List<MemberBlock> blocks = new ArrayList<>();

  /**
   * Draws the members.
   *
   * @param scenario place, colony and what is known
   * @param belief mites on the first day
   * @param settings members, seed and threads
   * @throws IllegalArgumentException if no colony of this season and place can be scaled to the
   *     facts
   */
  public Trials(Scenario scenario, MiteBelief belief, EnsembleSettings settings) {
    this.scenario = scenario;
    this.settings = settings;
    dates =
        SeasonDates.of(scenario.climate(), scenario.start(), scenario.end(), scenario.parameters());
    Draws draws = new Draws(scenario, settings.seed());
    int count = (settings.members() + BLOCK - 1) / BLOCK;
    MemberBlock[] made = new MemberBlock[count];
    List<Runnable> work = new ArrayList<>();
    for (int block = 0; block < count; block++) {
      int place = block;
      int first = block * BLOCK;
      int lanes = Math.min(BLOCK, settings.members() - first);
      work.add(() -> made[place] = new MemberBlock(scenario, belief, draws, first, lanes));
    }
    Parallel.run(work, settings.threads());
    blocks.addAll(List.of(made));
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
   * Tries plans.
   *
   * @param plans the plans, each with the feeding of the scenario
   * @return the outcomes of each, in their order; the same whatever other plans are tried
   * @throws ModelException if the model leaves its range
   */
  public List<OutcomeTable> run(List<Plan> plans) {
    List<OutcomeTable> tables = new ArrayList<>();
    plans.forEach(plan -> tables.add(new OutcomeTable(settings.members())));
    List<Runnable> work = new ArrayList<>();
    for (int block = 0; block < blocks.size(); block++) {
      int place = block;
      for (int from = 0; from < plans.size(); from += PLANS) {
        int first = from;
        int until = Math.min(from + PLANS, plans.size());
        work.add(
            () -> {
              for (int plan = first; plan < until; plan++) {
                run(place, plans.get(plan), tables.get(plan));
              }
            });
      }
    }
    Parallel.run(work, settings.threads());
    return List.copyOf(tables);
  }

  private void run(int place, Plan plan, OutcomeTable table) {
    MemberBlock block = blocks.get(place);
    int lanes = block.start().lanes();
    OutcomeObserver outcomes =
        new OutcomeObserver(dates, scenario.end(), limit(scenario), table, place * BLOCK, lanes);
    block
        .simulator()
        .run(block.start(), block.interventions(scenario.stepsUnder(plan)), List.of(outcomes));
    outcomes.close();
  }

  /** Limit above which days are counted (mites per 100 bees). */
  static double limit(Scenario scenario) {
    return scenario
        .threshold()
        .map(threshold -> threshold.mitesPer100Bees())
        .orElse(scenario.parameters().value(ParameterId.THRESHOLD_USUAL));
  }
}
