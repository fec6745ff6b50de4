package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.Locale;

/**
 * Something to do on a day.
 *
 * @param date the day
 * @param kind what sort of thing
 * @param words what to do, a sentence without a full stop
 */
public record PlanDate(LocalDate date, Kind kind, String words) {
  /** Sorts of things to do. */
  public enum Kind {
    /** A treatment is applied. */
    APPLY,
    /** Trays or strips are taken out. */
    REMOVE,
    /** Something is done to queen, brood or bees. */
    MEASURE,
    /** Mites are counted again. */
    COUNT,
    /** What the plan leaves open must be decided. */
    DECIDE;

    /**
     * The sort as files have it.
     *
     * @return one word
     */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }
}
