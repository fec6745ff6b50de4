package org.undercap.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.OutcomeTable;
import org.undercap.ensemble.SeasonDates.JudgedBrood;

/**
 * Which of the plans to take.
 *
 * @param order places of the plans that nothing rules out, the best first
 * @param behind by what each plan fell behind the best of these
 * @param needless whether doing nothing comes first because no treatment is needed
 */
record Choice(List<Integer> order, List<Optional<By>> behind, boolean needless) {
  /** Doing nothing is the first of the plans. */
  private static final int NOTHING = 0;

  private static final double NEARLY_ALL = 0.9;

  static Choice of(
      List<OutcomeTable> outcomes, List<List<Objection>> ruledOut, JudgedBrood judged) {
    List<Integer> allowed =
        IntStream.range(0, outcomes.size())
            .filter(plan -> ruledOut.get(plan).isEmpty())
            .boxed()
            .toList();
    Ranking ranking = Ranking.of(allowed.stream().map(outcomes::get).toList(), judged);
    List<Integer> order = ranking.order().stream().map(allowed::get).toList();
    List<Optional<By>> behind =
        new ArrayList<>(Collections.nCopies(outcomes.size(), Optional.empty()));
    for (int i = 0; i < allowed.size(); i++) {
      behind.set(allowed.get(i), ranking.behind().get(i));
    }
    Choice ranked = new Choice(order, behind, false);
    return ranked.nothingHarmsNoMore() && staysBelowTheLimit(outcomes.get(NOTHING))
        ? new Choice(ranked.waiting().order(), behind, true)
        : ranked;
  }

  /** Whether doing nothing is allowed and harms the bees no more than anyone could see. */
  boolean nothingHarmsNoMore() {
    return order.contains(NOTHING)
        && behind.get(NOTHING).filter(by -> by != By.MITES_LEFT).isEmpty();
  }

  /** The same with doing nothing before all others. */
  Choice waiting() {
    List<Integer> first = new ArrayList<>(order);
    first.remove(Integer.valueOf(NOTHING));
    first.add(0, NOTHING);
    return new Choice(first, behind, needless);
  }

  private static boolean staysBelowTheLimit(OutcomeTable outcomes) {
    return daysAbove(outcomes, Outcome.DAYS_ABOVE_BEFORE_MIDWINTER) == 0
        && daysAbove(outcomes, Outcome.DAYS_ABOVE_AFTER_MIDWINTER) == 0
        && outcomes.mean(Outcome.LOST) == 0;
  }

  private static double daysAbove(OutcomeTable outcomes, Outcome outcome) {
    return outcomes.quantiles(outcome, NEARLY_ALL)[0];
  }
}
