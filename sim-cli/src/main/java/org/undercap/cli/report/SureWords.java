package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.ensemble.Outcome;

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
