package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.undercap.cli.output.Numbers;
import org.undercap.comparison.Comparison;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.SeasonDates.JudgedBrood;

/** The answer in a sentence, and how sure it is. */
final class SureWords {
  /** A plan that is better less often than this is hardly told from the other (fraction). */
  private static final double HARDLY = 0.6;

  private static final int PERCENT = 100;

  private final Answer answer;
  private final Comparison comparison;
  private final int chosen;
  private final RuledOutWords ruledOut;

  SureWords(Answer answer) {
    this.answer = answer;
    comparison = answer.comparison();
    chosen = answer.advice().chosen();
    ruledOut = new RuledOutWords(answer);
  }

  /** The answer in one or two sentences. */
  String headline() {
    if (comparison.results().size() == 1) {
      return "This scenario has no plan but to do nothing, so there is nothing to choose from."
          + wash().map(words -> " " + words).orElse("");
    }
    if (chosen == answer.nothing()) {
      return nothing();
    }
    return wash().orElseGet(() -> PlanWords.capital(plan()));
  }

  private String plan() {
    int second = answer.advice().second().orElseThrow();
    return new PlanWords(answer.chosen().plan()).phrase()
        + ". "
        + behind(second).map(by -> first(by, second)).orElseGet(() -> alike(second));
  }

  /** A plan may begin with work that is no treatment before the wash. */
  private String followed() {
    LocalDate wash = answer.advice().nextWash().orElseThrow().date();
    return answer.chosen().plan().steps().stream().anyMatch(step -> step.date().isBefore(wash))
        ? "Until then and after: "
        : "With fewer: ";
  }

  /** What must be known at once: winter bees that are not protected, a better plan ruled out. */
  List<String> warnings() {
    boolean treats = chosen != answer.nothing();
    return Stream.of(
            wash().filter(words -> treats).map(words -> followed() + plan()),
            ProtectionWords.of(answer),
            ruledOut.curable())
        .flatMap(Optional::stream)
        .toList();
  }

  /** What is said of all plans must hold for all; else only the second is named. */
  private String first(By by, int second) {
    String best =
        ruledOut.any() ? "Of the plans that nothing rules out it " : "Of the plans compared it ";
    String than = " than " + answer.name(second) + ".";
    String bees = HarmWords.bees(comparison.dates().judged());
    return switch (by) {
      case LOSSES ->
          isLeast(this::lost, 0)
              ? best + "loses the colony in the fewest simulated seasons."
              : "It loses the colony in fewer simulated seasons" + than;
      case HARM_TO_BROOD ->
          !isLeast(plan -> median(plan, Ranking.HARM), 0)
              ? "It harms fewer " + bees + than
              : best
                  + (protectsBest()
                      ? "protects the winter bees best."
                      : "harms the fewest " + bees + ".");
      case WEAKENED_BEES ->
          isLeast(this::weakened, 0)
              ? best + "leaves the fewest weakened bees at midwinter."
              : "It leaves fewer weakened bees at midwinter" + than;
      case MITES_LEFT -> mitesLeft(best, second);
    };
  }

  private String mitesLeft(String best, int second) {
    String words =
        isAsGood(second)
            ? asWell(second) + ", but this plan leaves fewer mites for the next season"
            : isLeast(plan -> median(plan, Outcome.MITES_AT_END), 0)
                ? best + "leaves the fewest mites for the next season"
                : "It leaves fewer mites for the next season than " + answer.name(second);
    return words
        + " (about "
        + Figures.whole(median(chosen, Outcome.MITES_AT_END))
        + " on "
        + DateWords.day(answer.scenario().end())
        + ", not "
        + Figures.whole(median(second, Outcome.MITES_AT_END))
        + ").";
  }

  /** Whether no plan that nothing rules out has clearly less of something than the chosen one. */
  private boolean isLeast(IntToDoubleFunction of, double clearly) {
    double own = of.applyAsDouble(chosen);
    return answer.advice().order().stream().noneMatch(p -> of.applyAsDouble(p) < own - clearly);
  }

  private boolean protectsBest() {
    return comparison.dates().judged() == JudgedBrood.WINTER_BEES
        && isLeast(this::weakened, Ranking.STEP);
  }

  private double lost(int plan) {
    return answer.result(plan).outcomes().mean(Outcome.LOST);
  }

  /** Whether another plan harms the brood that is judged no more within what can be seen. */
  private boolean isAsGood(int other) {
    return median(other, Ranking.HARM) - median(chosen, Ranking.HARM) <= Ranking.STEP;
  }

  private String alike(int second) {
    String difference = DifferenceWords.of(answer, second);
    return asWell(second)
        + ", with as few mites left"
        + (difference.isEmpty() ? ". Choose by what is at hand." : ", but " + difference + ".");
  }

  private String asWell(int second) {
    return second == answer.nothing()
        ? "The winter bees do as well if nothing is done"
        : "The winter bees do as well under " + answer.name(second);
  }

  private String nothing() {
    String wash = wash().map(words -> " " + words).orElse(" Go on counting mites.");
    if (answer.waiting().isPresent()) {
      return wash.strip()
          + " Of your plans "
          + answer.name(answer.waiting().get())
          + " would then come first.";
    }
    if (answer.advice().needless()) {
      return "Do nothing for now. No plan protects the winter bees better, and untreated the colony"
          + " stays below the limit of "
          + Numbers.exact(answer.scenario().limit())
          + " mites on 100 bees in at least 9 of 10 simulated seasons."
          + wash;
    }
    return (answer.stuck()
            ? "None of your plans can be used as they are written: something rules out each of them."
            : "Do nothing for now: no plan that nothing rules out does the colony any better.")
        + wash().map(words -> " " + words).orElse("");
  }

  /** When to count again if no treatment is needed now, and at which count to treat. */
  private Optional<String> wash() {
    return answer
        .advice()
        .nextWash()
        .map(
            wash ->
                "No treatment needed now; wash "
                    + wash.bees()
                    + " bees again on "
                    + DateWords.day(wash.date())
                    + ". "
                    + RecountWords.treatAt(wash, answer.scenario().limit())
                    + ".");
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

  private Optional<By> behind(int place) {
    return answer.advice().behind().get(place);
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
    fewerWeakened().ifPresent(items::add);
    below().ifPresent(items::add);
    items.addAll(ruledOut.others());
    items.addAll(new OutlookWords(answer).items());
    String said = headline() + String.join(" ", warnings()) + String.join(" ", items);
    Glossary.explained(said).ifPresent(items::add);
    return items;
  }

  /** The table shows it, so it is said: another plan spares more bees, but more brood is harmed. */
  private Optional<String> fewerWeakened() {
    return answer.advice().order().stream()
        .filter(plan -> behind(plan).equals(Optional.of(By.HARM_TO_BROOD)))
        .filter(plan -> comparison.tells(Outcome.WEAKENED_AT_MIDWINTER))
        .filter(plan -> weakened(chosen) - weakened(plan) > Ranking.STEP)
        .findFirst()
        .map(
            plan ->
                answer.name(plan)
                    + " would leave fewer weakened bees at midwinter ("
                    + Figures.plain(PERCENT * weakened(plan))
                    + " %, not "
                    + Figures.plain(PERCENT * weakened(chosen))
                    + " %), but harms more "
                    + HarmWords.bees(comparison.dates().judged())
                    + ", which counts first.");
  }

  private double weakened(int plan) {
    return median(plan, Outcome.WEAKENED_AT_MIDWINTER);
  }

  private Against against(int other) {
    By by = behind(other).orElse(By.MITES_LEFT);
    return switch (by) {
      case LOSSES -> losses(other);
      case HARM_TO_BROOD -> harm(other);
      case WEAKENED_BEES -> fewerWeakened(other);
      case MITES_LEFT ->
          isAsGood(other)
              ? new Against(
                  "As good as ",
                  " for the winter bees: the difference is too small to be seen in a hive.")
              : harm(other);
    };
  }

  private Against losses(int other) {
    return new Against(
        "Better than ",
        ": the colony is lost "
            + Figures.runs(lost(chosen))
            + ", not "
            + Figures.runs(lost(other))
            + ".");
  }

  private Against fewerWeakened(int other) {
    return new Against(
        "Better than ",
        ": "
            + Figures.percent(answer.chosen(), Outcome.WEAKENED_AT_MIDWINTER)
            + " of the bees are weakened at midwinter, not "
            + Figures.percent(answer.result(other), Outcome.WEAKENED_AT_MIDWINTER)
            + ".");
  }

  private Against harm(int other) {
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
            + " of 100 "
            + HarmWords.bees(comparison.dates().judged())
            + " are harmed, not "
            + Figures.plain(PERCENT * median(other, Ranking.HARM))
            + " ("
            + fewer(PERCENT * fewer[0], PERCENT * fewer[2])
            + " in 8 of 10 simulated seasons).");
  }

  /** How the chosen plan compares with others: what is said before and after their names. */
  private record Against(String before, String after) {
    String sentence(List<String> names) {
      return before + DateWords.joined(names) + after;
    }
  }

  /** The range of 8 in 10 of a difference, without a sign. */
  private static String fewer(double low, double high) {
    String most = Figures.plain(high);
    return low < 0 && !Figures.plain(low).equals("0")
        ? "from " + Figures.plain(-low) + " more to " + most + " fewer"
        : Figures.plain(Math.max(0, low)) + " to " + most + " fewer";
  }
}
