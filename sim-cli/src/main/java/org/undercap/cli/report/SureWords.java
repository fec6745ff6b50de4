package org.undercap.cli.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.ensemble.Outcome;
import org.undercap.scenario.Assumption.Basis;
import org.undercap.treatment.PlanStep;

/** How sure an answer is. */
final class SureWords {
  private static final int PERCENT = 100;

  private final Answer answer;
  private final Comparison comparison;
  private final int chosen;

  SureWords(Answer answer) {
    this.answer = answer;
    comparison = answer.comparison();
    chosen = answer.advice().chosen();
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
    AgainstWords words = new AgainstWords(answer);
    Map<AgainstWords.Against, List<String>> against = new LinkedHashMap<>();
    for (int other : others) {
      against.computeIfAbsent(words.of(other), w -> new ArrayList<>()).add(answer.name(other));
    }
    against.forEach((said, names) -> items.add(said.sentence(names)));
    fewerWeakened().ifPresent(items::add);
    fewerHarmed().ifPresent(items::add);
    killedInCells().ifPresent(items::add);
    notSaid().ifPresent(items::add);
    oldFacts().ifPresent(items::add);
    below().ifPresent(items::add);
    items.addAll(new RuledOutWords(answer).others());
    items.addAll(new OutlookWords(answer).items());
    FrontWords front = new FrontWords(answer);
    String page = front.headline() + String.join(" ", front.warnings()) + String.join(" ", items);
    Glossary.explained(page).ifPresent(items::add);
    return items;
  }

  /** The table shows it, so it is said: another plan spares more bees, but more brood is harmed. */
  private Optional<String> fewerWeakened() {
    return answer.advice().order().stream()
        .filter(plan -> answer.behind(plan).equals(Optional.of(By.HARM_TO_BROOD)))
        .filter(plan -> comparison.tells(Outcome.WEAKENED_AT_MIDWINTER))
        .filter(plan -> answer.weakened(chosen) - answer.weakened(plan) > Ranking.STEP)
        .findFirst()
        .map(
            plan ->
                answer.name(plan)
                    + " would leave fewer weakened bees at midwinter ("
                    + Figures.plain(PERCENT * answer.weakened(plan))
                    + " %, not "
                    + Figures.plain(PERCENT * answer.weakened(chosen))
                    + " %), but harms more "
                    + HarmWords.bees(comparison.dates().judged())
                    + ", which counts first.");
  }

  /** The table shows it, so it is said: another plan harms less brood, but falls behind before. */
  private Optional<String> fewerHarmed() {
    return answer.advice().order().stream()
        .filter(plan -> harm(chosen) - harm(plan) > Ranking.STEP)
        .filter(plan -> answer.behind(plan).filter(by -> by != By.HARM_TO_BROOD).isPresent())
        .min(Comparator.comparingDouble(this::harm))
        .map(
            plan ->
                answer.name(plan)
                    + " would harm fewer "
                    + HarmWords.bees(comparison.dates().judged())
                    + " ("
                    + Figures.plain(PERCENT * harm(plan))
                    + " of 100, not "
                    + Figures.plain(PERCENT * harm(chosen))
                    + "), but "
                    + HarmWords.behind(answer.behind(plan).orElseThrow())
                    + ", which counts first.");
  }

  /** A plan that comes first by brood whose mites it kills too late to spare it all harm. */
  private Optional<String> killedInCells() {
    boolean first =
        answer
            .advice()
            .second()
            .flatMap(answer::behind)
            .filter(by -> by == By.HARM_TO_BROOD)
            .isPresent();
    boolean reaches =
        answer.chosen().plan().steps().stream()
            .anyMatch(
                step ->
                    step instanceof PlanStep.Application application
                        && application.method().profile().inCellRatio() > 0);
    return first && reaches
        ? Optional.of(
            "Its lead is partly a way of counting: where it kills a mite under the cappings the bee"
                + " counts as unharmed, though the mite had fed on it.")
        : Optional.empty();
  }

  private double harm(int plan) {
    return answer.median(plan, Ranking.HARM);
  }

  /** A fact that nobody gave and that would turn the advice round. */
  private Optional<String> notSaid() {
    List<String> turns =
        answer.advice().flips().stream()
            .filter(flip -> flip.instead().isPresent() && isAssumed(flip.what()))
            .map(
                flip ->
                    "with "
                        + ChangeWords.whole(flip.change())
                        + " "
                        + ChangeWords.plan(flip.instead().orElseThrow())
                        + " comes first")
            .toList();
    return turns.isEmpty()
        ? Optional.empty()
        : Optional.of("It hangs on what you did not say: " + String.join("; ", turns) + ".");
  }

  private boolean isAssumed(String what) {
    return answer.scenario().assumptions().stream()
        .filter(assumption -> assumption.basis() == Basis.DEFAULT)
        .anyMatch(assumption -> ("." + assumption.field()).endsWith("." + what));
  }

  private Optional<String> oldFacts() {
    LocalDate facts = answer.scenario().start();
    return answer.chosen().plan().steps().stream()
        .map(PlanStep::date)
        .min(Comparator.naturalOrder())
        .map(first -> ChronoUnit.DAYS.between(facts, first))
        .filter(days -> days > NewScenario.OLD_FACTS)
        .map(
            days ->
                "Its treatment begins "
                    + days
                    + " days after the facts of "
                    + DateWords.day(facts)
                    + ": count and look at the brood again before it.");
  }

  private Optional<String> below() {
    return answer
        .advice()
        .nextWash()
        .map(
            wash ->
                "Untreated it stays below the limit until then in at least 9 of 10 simulated seasons"
                    + (wash.mayReachLimit() ? "." : "; four weeks is the longest wait."));
  }
}
