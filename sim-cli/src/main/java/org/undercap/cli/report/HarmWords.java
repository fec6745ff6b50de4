package org.undercap.cli.report;

import org.undercap.comparison.Ranking.By;
import org.undercap.ensemble.SeasonDates.JudgedBrood;

/** What plans are judged by, in the words of the trade: one place for all pages. */
final class HarmWords {
  /** What harm is, a sentence. */
  static final String MEANING = "Harmed: a living mite was in the cell when the bee came out.";

  private HarmWords() {}

  /** By what a plan fell behind, as in {@code it leaves more mites}. */
  static String behind(By by) {
    return switch (by) {
      case LOSSES -> "loses more colonies";
      case HARM_TO_BROOD -> "harms more brood";
      case WEAKENED_BEES -> "leaves more weakened bees at midwinter";
      case MITES_LEFT -> "leaves more mites for the next season";
    };
  }

  /** By what plans are put in order. */
  static String order(JudgedBrood judged) {
    return "The order: first come plans that lose fewer colonies, then those with "
        + (judged == JudgedBrood.LATE
            ? "fewer weakened bees at midwinter, then fewer mites left for the next season, last"
                + " fewer late bees harmed, since most of the winter bees are out. "
            : "fewer "
                + bees(judged)
                + " harmed, then fewer weakened bees at midwinter, last fewer mites left for the"
                + " next season. ")
        + "Differences too small to be seen in a hive do not count.";
  }

  /** Which bees are counted. */
  static String bees(JudgedBrood judged) {
    return switch (judged) {
      case WINTER_BEES -> "winter bees";
      case LATE -> "late bees";
      case OF_THE_RUN -> "young bees";
    };
  }
}
