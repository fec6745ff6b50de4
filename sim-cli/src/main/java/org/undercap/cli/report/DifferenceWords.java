package org.undercap.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.undercap.cli.output.Numbers;
import org.undercap.ensemble.Outcome;
import org.undercap.scenario.Plan;

/** In what a plan differs from the one to take, where the mites do not tell them apart. */
final class DifferenceWords {
  /** Numbers of bees that lie nearer to each other are not told apart (ratio). */
  private static final double NEAR = 0.1;

  private DifferenceWords() {}

  /** As in {@code it leaves fewer bees and takes more time}; empty if there is no difference. */
  static String of(Answer answer, int other) {
    List<String> differences = new ArrayList<>();
    if (answer.comparison().tells(Outcome.BEES_AFTER_WINTER)) {
      bees(differences, answer, other);
    }
    Plan mine = answer.chosen().plan();
    Plan theirs = answer.result(other).plan();
    double minutes = answer.scenario().minutes(theirs);
    double mineMinutes = answer.scenario().minutes(mine);
    if (minutes != mineMinutes) {
      differences.add(
          "takes "
              + Figures.whole(minutes)
              + " minutes of work, not "
              + Figures.whole(mineMinutes));
    }
    OptionalDouble cost = answer.scenario().cost(theirs);
    OptionalDouble mineCost = answer.scenario().cost(mine);
    if (cost.isPresent() && mineCost.isPresent() && !cost.equals(mineCost)) {
      differences.add(
          "costs "
              + Numbers.exact(cost.getAsDouble())
              + ", not "
              + Numbers.exact(mineCost.getAsDouble()));
    }
    return differences.isEmpty() ? "" : "that one " + DateWords.joined(differences);
  }

  private static void bees(List<String> differences, Answer answer, int other) {
    double mine = answer.median(answer.advice().chosen(), Outcome.BEES_AFTER_WINTER);
    double theirs = answer.median(other, Outcome.BEES_AFTER_WINTER);
    if (Math.abs(theirs - mine) > NEAR * mine) {
      differences.add(
          (theirs < mine ? "leaves fewer" : "leaves more")
              + " bees at winter's end (about "
              + Figures.whole(theirs)
              + ", not "
              + Figures.whole(mine)
              + ")");
    }
  }
}
