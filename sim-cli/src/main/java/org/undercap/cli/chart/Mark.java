package org.undercap.cli.chart;

import java.time.LocalDate;

/** A treatment or measure, drawn as a vertical band with its words and dates above it. */
public record Mark(LocalDate from, LocalDate until, String words) {

  /**
   * Checks the dates.
   *
   * @param from first day
   * @param until last day, included
   * @param words what is done, without the dates, which the chart adds
   * @throws IllegalArgumentException if the last day lies before the first or the words are blank
   */
  public Mark {
    if (until.isBefore(from)) {
      throw new IllegalArgumentException("last day " + until + " lies before first day " + from);
    }
    if (words.isBlank()) {
      throw new IllegalArgumentException("mark on " + from + " needs words");
    }
  }
}
