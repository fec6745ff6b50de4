package org.undercap.ensemble;

import java.util.ArrayList;
import java.util.List;
import org.undercap.model.ModelException;
import org.undercap.scenario.Plan;
import org.undercap.scenario.Scenario;

/**
 * Many plans tried on the same members, for their outcomes alone. Members and their draws are those
 * of {@link Ensemble}, made once for all calls; plans are spread over the threads.
 */
public final class Trials {
  /** Plans that a thread takes at a time. */
  private static final int PLANS = 16;

  private final Members members;
  private final List<MemberBlock> blocks;

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
    this(Members.of(scenario, belief, settings));
  }

  private Trials(Members members) {
    this.members = members;
    MemberBlock[] made = new MemberBlock[members.blocks()];
    members.work(made.length, () -> number -> made[number] = members.block(number));
    blocks = List.of(made);
  }

  /**
   * The same members where something else is known, so that what does not differ is not worked out
   * again.
   *
   * @param changed place, colony and what is known
   * @param belief mites on the first day
   * @return trials with the same settings
   * @throws IllegalArgumentException if no colony of this season and place can be scaled to the
   *     facts
   */
  public Trials in(Scenario changed, MiteBelief belief) {
    return new Trials(members.in(changed, belief));
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
   * Tries plans.
   *
   * @param plans the plans, each with the feeding of the scenario
   * @return the outcomes of each, in their order; the same whatever other plans are tried
   * @throws ModelException if the model leaves its range
   */
  public List<OutcomeTable> run(List<Plan> plans) {
    List<OutcomeTable> tables = new ArrayList<>();
    plans.forEach(plan -> tables.add(new OutcomeTable(members.settings().members())));
    int parts = (plans.size() + PLANS - 1) / PLANS;
    members.work(
        blocks.size() * parts,
        () ->
            piece -> {
              MemberBlock block = blocks.get(piece / parts);
              int from = piece % parts * PLANS;
              for (int plan = from; plan < Math.min(from + PLANS, plans.size()); plan++) {
                block.run(plans.get(plan), tables.get(plan), List.of());
              }
            });
    return List.copyOf(tables);
  }
}
