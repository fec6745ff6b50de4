package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.PlanResult;
import org.undercap.parameter.ParameterId;
import org.undercap.scenario.Scenario;

/** The answer in a sentence, and how sure it is. */
final class SureWords {
  /** A colony that is lost more often than this must be told of (fraction). */
  private static final double LOSS_TOLD = 0.05;

  /** A plan that is better less often than this is hardly told from the other (fraction). */
  private static final double HARDLY = 0.6;

  private final Answer answer;
  private final Comparison comparison;
  private final int chosen;

  SureWords(Answer answer) {
    this.answer = answer;
    comparison = answer.comparison();
    chosen = answer.advice().chosen();
  }

  /** What counts as harm, for people. */
  static String harmed(Comparison comparison) {
    return comparison.dates().lateBrood() ? "late brood" : "winter brood";
  }

  /** The answer in one or two sentences. */
  String headline() {
    if (comparison.results().size() == 1) {
      return "This scenario has no plan but to do nothing, so there is nothing to choose from.";
    }
    if (answer.chosen().plan().steps().isEmpty()) {
      return nothing();
    }
    String what = PlanWords.capital(new PlanWords(answer.chosen().plan()).phrase());
    if (answer.advice().order().size() == 1) {
      return what + ". It is the only plan that nothing rules out.";
    }
    int second = answer.advice().order().get(1);
    return isTie(second)
        ? what
            + ". For the winter bees it is no better than "
            + answer.name(second)
            + ": the difference is too small to be seen in a hive. It comes first because it leaves "
            + decider(second)
            + "."
        : what + ". Of the plans compared it harms the winter bees least.";
  }

  private String nothing() {
    if (answer.advice().order().size() == 1) {
      return "Do nothing for now: something rules out every other plan.";
    }
    int second = answer.advice().order().get(1);
    return "Do nothing for now: no plan protects the winter bees better."
        + (isTie(second) ? " The next, " + answer.name(second) + ", protects them as well." : "");
  }

  /** Whether two plans harm winter bees alike within what can be seen. */
  private boolean isTie(int other) {
    return Math.abs(median(other, Ranking.HARM) - median(chosen, Ranking.HARM)) < Ranking.STEP;
  }

  private String decider(int other) {
    double weakened =
        median(other, Outcome.WEAKENED_AT_MIDWINTER)
            - median(chosen, Outcome.WEAKENED_AT_MIDWINTER);
    return weakened > Ranking.STEP ? "fewer weakened bees at midwinter" : "fewer mites at the end";
  }

  private double median(int place, Outcome outcome) {
    return answer.result(place).outcomes().median(outcome);
  }

  /** How sure, against the next plan and doing nothing, and what else must be known. */
  List<String> items() {
    List<String> items = new ArrayList<>();
    answer.advice().second().ifPresent(second -> items.add(against(second)));
    int nothing = answer.nothing();
    boolean told = answer.advice().second().filter(second -> second == nothing).isPresent();
    if (chosen != nothing && !told) {
      items.add(against(nothing));
    }
    ruledOut(items);
    left(items);
    lost(items);
    return items;
  }

  private String against(int other) {
    double better = comparison.betterIn(chosen, other);
    double[] fewer =
        Figures.difference(
            answer.chosen().outcomes().of(Ranking.HARM),
            answer.result(other).outcomes().of(Ranking.HARM));
    for (int i = 0; i < fewer.length; i++) {
      fewer[i] *= 100;
    }
    String difference =
        ": "
            + Figures.said(fewer)
            + " percentage points less of the "
            + harmed(comparison)
            + " parasitised";
    if (isTie(other)) {
      return "As good as " + answer.name(other) + " for the winter bees" + difference + ".";
    }
    return (better < HARDLY ? "Hardly to be told from " : "Better than ")
        + answer.name(other)
        + " "
        + Figures.runs(better)
        + difference
        + ".";
  }

  /** Plans that would harm winter bees less if nothing ruled them out. */
  private void ruledOut(List<String> items) {
    for (int place : comparison.ranking()) {
      if (place == chosen) {
        return;
      }
      List<String> reasons = answer.advice().ruledOut().get(place);
      items.add(
          PlanWords.capital(answer.name(place))
              + " would protect the winter bees better, but is ruled out: "
              + DateWords.said(String.join("; ", reasons))
              + ".");
    }
  }

  private void left(List<String> items) {
    PlanResult result = answer.chosen();
    if (comparison.tells(Outcome.MITES_AT_MIDWINTER)) {
      items.add(
          "Mites left are another matter: it leaves about "
              + Figures.said(result, Outcome.MITES_AT_MIDWINTER)
              + " at midwinter; doing nothing "
              + Figures.said(answer.result(answer.nothing()), Outcome.MITES_AT_MIDWINTER)
              + ".");
    }
    double limit = limit(answer.scenario());
    List<LocalDate> dates = comparison.dates().countDates();
    Outcome last = PlanTables.COUNTS.get(dates.size() - 1);
    double mites = result.outcomes().median(last);
    if (mites > limit) {
      items.add(
          "Not enough for the next season: on "
              + DateWords.day(dates.get(dates.size() - 1))
              + " there are about "
              + Figures.said(result, last)
              + " mites on 100 bees, above the limit of "
              + Figures.plain(limit)
              + ". Plan a further treatment before then.");
    }
  }

  /** The limit to act, of the user or the usual one (mites per 100 bees). */
  static double limit(Scenario scenario) {
    return scenario
        .threshold()
        .map(threshold -> threshold.mitesPer100Bees())
        .orElse(scenario.parameters().value(ParameterId.THRESHOLD_USUAL));
  }

  private void lost(List<String> items) {
    double share = answer.chosen().outcomes().mean(Outcome.LOST);
    if (share >= LOSS_TOLD) {
      items.add(
          "The colony is lost "
              + Figures.runs(share)
              + " even so; under doing nothing "
              + Figures.runs(answer.result(answer.nothing()).outcomes().mean(Outcome.LOST))
              + ".");
    }
  }
}
