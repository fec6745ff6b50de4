package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.undercap.cli.output.Numbers;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.SeasonDates.JudgedBrood;

/** The answer in a sentence, and what must be known at once. */
final class FrontWords {
  private final Answer answer;
  private final JudgedBrood judged;
  private final int chosen;
  private final RuledOutWords ruledOut;

  FrontWords(Answer answer) {
    this.answer = answer;
    judged = answer.comparison().dates().judged();
    chosen = answer.advice().chosen();
    ruledOut = new RuledOutWords(answer);
  }

  /** The answer in one or two sentences. */
  String headline() {
    if (answer.comparison().results().size() == 1) {
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
        + answer.behind(second).map(by -> first(by, second)).orElseGet(() -> alike(second));
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
    String bees = HarmWords.bees(judged);
    return switch (by) {
      case LOSSES ->
          isLeast(answer::lost, 0)
              ? best + "loses the colony in the fewest simulated seasons."
              : "It loses the colony in fewer simulated seasons" + than;
      case HARM_TO_BROOD ->
          !isLeast(plan -> answer.median(plan, Ranking.HARM), 0)
              ? "It harms fewer " + bees + than
              : best
                  + (protectsBest()
                      ? "protects the winter bees best."
                      : "harms the fewest " + bees + ".");
      case WEAKENED_BEES ->
          isLeast(answer::weakened, 0)
              ? best + "leaves the fewest weakened bees at midwinter."
              : "It leaves fewer weakened bees at midwinter" + than;
      case MITES_LEFT -> mitesLeft(best, second);
    };
  }

  private String mitesLeft(String best, int second) {
    String words =
        answer.isAsGood(second)
            ? asWell(second) + ", but this plan leaves fewer mites for the next season"
            : isLeast(plan -> answer.median(plan, Outcome.MITES_AT_END), 0)
                ? best + "leaves the fewest mites for the next season"
                : "It leaves fewer mites for the next season than " + answer.name(second);
    return words
        + " (about "
        + Figures.whole(answer.median(chosen, Outcome.MITES_AT_END))
        + " on "
        + DateWords.day(answer.scenario().end())
        + ", not "
        + Figures.whole(answer.median(second, Outcome.MITES_AT_END))
        + ").";
  }

  /** Whether no plan that nothing rules out has clearly less of something than the chosen one. */
  private boolean isLeast(IntToDoubleFunction of, double clearly) {
    double own = of.applyAsDouble(chosen);
    return answer.advice().order().stream().noneMatch(p -> of.applyAsDouble(p) < own - clearly);
  }

  private boolean protectsBest() {
    return judged == JudgedBrood.WINTER_BEES && isLeast(answer::weakened, Ranking.STEP);
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
}
