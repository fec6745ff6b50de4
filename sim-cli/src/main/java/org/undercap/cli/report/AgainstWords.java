package org.undercap.cli.report;

import java.util.List;
import org.undercap.comparison.Ranking;
import org.undercap.comparison.Ranking.By;
import org.undercap.ensemble.Outcome;

/** How the plan to take compares with another one. */
final class AgainstWords {
  /** A plan that is better less often than this is hardly told from the other (fraction). */
  private static final double HARDLY = 0.6;

  private static final int PERCENT = 100;

  private final Answer answer;
  private final int chosen;

  AgainstWords(Answer answer) {
    this.answer = answer;
    chosen = answer.advice().chosen();
  }

  /** What is said of another plan, and by what it fell behind. */
  Against of(int other) {
    By by = answer.behind(other).orElse(By.MITES_LEFT);
    return switch (by) {
      case LOSSES -> losses(other);
      case HARM_TO_BROOD -> harm(other);
      case WEAKENED_BEES -> fewerWeakened(other);
      case MITES_LEFT ->
          answer.isAsGood(other)
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
            + Figures.runs(answer.lost(chosen))
            + ", not "
            + Figures.runs(answer.lost(other))
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
    double better = answer.comparison().betterIn(chosen, other);
    double[] fewer =
        Figures.difference(
            answer.chosen().outcomes().of(Ranking.HARM),
            answer.result(other).outcomes().of(Ranking.HARM));
    return new Against(
        better < HARDLY ? "Hardly to be told from " : "Better than ",
        " "
            + Figures.runs(better)
            + ": "
            + Figures.plain(PERCENT * answer.median(chosen, Ranking.HARM))
            + " of 100 "
            + HarmWords.bees(answer.comparison().dates().judged())
            + " are harmed, not "
            + Figures.plain(PERCENT * answer.median(other, Ranking.HARM))
            + " ("
            + fewer(PERCENT * fewer[0], PERCENT * fewer[2])
            + " in 8 of 10 simulated seasons).");
  }

  /** How the chosen plan compares with others: what is said before and after their names. */
  record Against(String before, String after) {
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
