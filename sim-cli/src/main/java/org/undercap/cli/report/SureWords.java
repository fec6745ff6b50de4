package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;

/** The answer in a sentence, and how sure it is. */
final class SureWords {
  /** A plan that is better less often than this is hardly told from the other (fraction). */
  private static final double HARDLY = 0.6;

  private static final int PERCENT = 100;

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
    if (chosen == answer.nothing()) {
      return nothing();
    }
    int second = answer.advice().second().orElseThrow();
    return PlanWords.capital(new PlanWords(answer.chosen().plan()).phrase())
        + ". "
        + (isTie(second) ? asGood(second) : best());
  }

  private String best() {
    return comparison.ranking().get(0) == chosen
        ? "Of the plans compared it harms the winter bees least."
        : "Of the plans that nothing rules out it harms the winter bees least.";
  }

  private String asGood(int second) {
    String other =
        second == answer.nothing()
            ? "The winter bees do as well if nothing is done"
            : "The winter bees do as well under " + answer.name(second);
    return other + decider(second).map(less -> ", but this plan leaves " + less).orElse("") + ".";
  }

  private String nothing() {
    if (answer.advice().second().isEmpty()) {
      return "Do nothing for now: something rules out every other plan.";
    }
    int second = answer.advice().second().get();
    return "Do nothing for now: no plan protects the winter bees better."
        + (isTie(second) ? " The next, " + answer.name(second) + ", protects them as well." : "");
  }

  private boolean isTie(int other) {
    return answer.alike(chosen, other);
  }

  /** What the chosen plan leaves less of than another that protects the winter bees as well. */
  private Optional<String> decider(int other) {
    if (less(other, Outcome.WEAKENED_AT_MIDWINTER) >= Ranking.STEP) {
      return Optional.of("fewer weakened bees at midwinter");
    }
    return less(other, Outcome.MITES_AT_END) > 0
        ? Optional.of(
            "fewer mites for the next season (about "
                + Figures.whole(median(chosen, Outcome.MITES_AT_END))
                + " on "
                + DateWords.day(answer.scenario().end())
                + ", not "
                + Figures.whole(median(other, Outcome.MITES_AT_END))
                + ")")
        : Optional.empty();
  }

  private double less(int other, Outcome outcome) {
    return median(other, outcome) - median(chosen, outcome);
  }

  private double median(int place, Outcome outcome) {
    return answer.median(place, outcome);
  }

  /** How sure, against the next plan and doing nothing, and what else must be known. */
  List<String> items() {
    List<String> items = new ArrayList<>();
    int nothing = answer.nothing();
    List<Integer> others = new ArrayList<>();
    answer.advice().second().ifPresent(others::add);
    if (chosen != nothing && !others.contains(nothing)) {
      others.add(nothing);
    }
    Map<Against, List<String>> against = new LinkedHashMap<>();
    for (int other : others) {
      against.computeIfAbsent(against(other), words -> new ArrayList<>()).add(answer.name(other));
    }
    against.forEach((words, names) -> items.add(words.sentence(names)));
    ruledOut(items);
    items.addAll(new OutlookWords(answer).items());
    return items;
  }

  private Against against(int other) {
    if (isTie(other)) {
      return new Against(
          "As good as ", " for the winter bees: the difference is too small to be seen in a hive.");
    }
    double better = comparison.betterIn(chosen, other);
    double[] fewer =
        Figures.difference(
            answer.chosen().outcomes().of(Ranking.HARM),
            answer.result(other).outcomes().of(Ranking.HARM));
    return new Against(
        better < HARDLY ? "Hardly to be told from " : "Better than ",
        " "
            + Figures.runs(better)
            + ": "
            + Figures.plain(PERCENT * median(chosen, Ranking.HARM))
            + " % of the "
            + harmed(comparison)
            + " parasitised, not "
            + Figures.plain(PERCENT * median(other, Ranking.HARM))
            + " % ("
            + points(PERCENT * fewer[0], PERCENT * fewer[2])
            + ").");
  }

  /** How the chosen plan compares with others: what is said before and after their names. */
  private record Against(String before, String after) {
    String sentence(List<String> names) {
      return before + DateWords.joined(names) + after;
    }
  }

  /** The range of 8 in 10 of a difference, without a sign. */
  private static String points(double low, double high) {
    String most = Figures.plain(high);
    return low < 0 && !Figures.plain(low).equals("0")
        ? "from " + Figures.plain(-low) + " points more to " + most + " points less"
        : Figures.plain(Math.max(0, low)) + " to " + most + " percentage points less";
  }

  /** Plans that would come first if nothing ruled them out, by reason. */
  private void ruledOut(List<String> items) {
    Map<String, List<String>> better = new LinkedHashMap<>();
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (int place : comparison.ranking()) {
      if (place == chosen) {
        break;
      }
      String reasons = DateWords.said(String.join("; ", answer.advice().ruledOut().get(place)));
      (isTie(place) ? alike : better)
          .computeIfAbsent(reasons, reason -> new ArrayList<>())
          .add(answer.name(place));
    }
    better.forEach(
        (reasons, plans) -> items.add(ruledOut(plans, "protect the winter bees better", reasons)));
    alike.forEach((reasons, plans) -> items.add(ruledOut(plans, "do as well or better", reasons)));
  }

  private static String ruledOut(List<String> plans, String what, String reasons) {
    return DateWords.joined(plans)
        + " would "
        + what
        + (plans.size() == 1 ? ", but is" : ", but are")
        + " ruled out ("
        + reasons
        + ").";
  }
}
