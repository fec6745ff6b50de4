package org.undercap.cli.report;

import java.util.Optional;
import org.undercap.comparison.Ranking;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.SeasonDates;
import org.undercap.ensemble.SeasonDates.JudgedBrood;

/**
 * Whether the plan to take protects the winter bees at all. Said with the answer if it does not.
 */
final class ProtectionWords {
  /** A plan that leaves more than this of the harm protects in part only (fraction). */
  private static final double MUCH = 0.5;

  private static final int PERCENT = 100;

  private ProtectionWords() {}

  /** One sentence; empty where the bees are protected, or few would be harmed anyway. */
  static Optional<String> of(Answer answer) {
    int chosen = answer.advice().chosen();
    int nothing = answer.nothing();
    double untreated = answer.median(nothing, Ranking.HARM);
    double left = answer.median(chosen, Ranking.HARM);
    JudgedBrood judged = answer.comparison().dates().judged();
    if (judged == JudgedBrood.OF_THE_RUN
        || untreated <= Ranking.STEP
        || answer.needsNoTreatment()) {
      return Optional.empty();
    }
    if (judged == JudgedBrood.LATE) {
      return Optional.of(
          "For most of the winter bees any plan comes too late: they are out already (the model takes"
              + " the last to emerge on "
              + DateWords.day(
                  SeasonDates.winterBees(
                          answer.scenario().climate(),
                          answer.scenario().start(),
                          answer.scenario().parameters())
                      .until())
              + ").");
    }
    if (chosen == nothing) {
      return Optional.of(
          "Then the winter bees are not protected: " + share(left) + " of 100 are harmed.");
    }
    if (left <= MUCH * untreated || left <= Ranking.STEP) {
      return Optional.empty();
    }
    boolean asNothing = untreated - left <= Ranking.STEP && !fewerWeakened(answer);
    return Optional.of(
        (asNothing
                ? "It does not protect the winter bees: "
                : "It protects the winter bees in part only: ")
            + share(left)
            + " of 100 are still harmed, "
            + share(untreated)
            + " if nothing is done.");
  }

  private static boolean fewerWeakened(Answer answer) {
    Outcome weakened = Outcome.WEAKENED_AT_MIDWINTER;
    return answer.comparison().tells(weakened)
        && answer.median(answer.nothing(), weakened)
                - answer.median(answer.advice().chosen(), weakened)
            > Ranking.STEP;
  }

  private static String share(double fraction) {
    return Figures.plain(PERCENT * fraction);
  }
}
