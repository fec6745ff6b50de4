package org.undercap.cli.report;

import org.undercap.ensemble.SeasonDates.JudgedBrood;

/** What plans are judged by, in the words of the trade: one place for all pages. */
final class HarmWords {
  /** What harm is, a sentence. */
  static final String MEANING = "Harmed: a mite shared the cell in which the bee grew up.";

  private HarmWords() {}

  /** Which bees are counted. */
  static String bees(JudgedBrood judged) {
    return switch (judged) {
      case WINTER_BEES -> "winter bees";
      case LATE -> "late bees";
      case OF_THE_RUN -> "young bees";
    };
  }
}
