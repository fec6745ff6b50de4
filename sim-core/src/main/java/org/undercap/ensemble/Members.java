package org.undercap.ensemble;

import java.util.function.IntConsumer;
import java.util.function.Supplier;
import org.undercap.climate.SeasonDay;
import org.undercap.internal.Parallel;
import org.undercap.scenario.Scenario;
import org.undercap.simulation.StartShape;

/**
 * All members of an ensemble: what is known and what is drawn. They are worked on in blocks of a
 * fixed size, so that the results are the same for any number of threads.
 *
 * @param scenario place, colony and what is known
 * @param belief mites on the first day
 * @param settings members, seed and threads
 * @param dates the days that outcomes look at
 * @param draws the draws
 * @param shape the colony on the first day before it is scaled
 */
record Members(
    Scenario scenario,
    MiteBelief belief,
    EnsembleSettings settings,
    SeasonDates dates,
    Draws draws,
    StartShape shape) {
  private static final int BLOCK = 64;

  static Members of(Scenario scenario, MiteBelief belief, EnsembleSettings settings) {
    return of(
        scenario,
        belief,
        settings,
        new StartShape(scenario.climate(), SeasonDay.of(scenario.start()), scenario.parameters()));
  }

  /** The same members where something else is known. */
  Members in(Scenario changed, MiteBelief changedBelief) {
    int day = SeasonDay.of(changed.start());
    return of(
        changed, changedBelief, settings, shape.on(changed.climate(), day, changed.parameters()));
  }

  private static Members of(
      Scenario scenario, MiteBelief belief, EnsembleSettings settings, StartShape shape) {
    return new Members(
        scenario,
        belief,
        settings,
        SeasonDates.of(scenario.climate(), scenario.start(), scenario.end(), scenario.parameters()),
        new Draws(scenario, settings.seed()),
        shape);
  }

  int blocks() {
    return (settings.members() + BLOCK - 1) / BLOCK;
  }

  MemberBlock block(int number) {
    int first = number * BLOCK;
    return new MemberBlock(this, first, Math.min(BLOCK, settings.members() - first));
  }

  /** Does pieces of work on the threads of the settings, each with a worker of its own. */
  void work(int pieces, Supplier<? extends IntConsumer> workers) {
    Parallel.run(pieces, settings.threads(), workers);
  }
}
