package org.undercap.hive;

import java.util.List;

/**
 * A published or official limit at which to act. Limits differ by place, season and way of counting
 * and fell with time, so a limit is an input of the user, never a constant of the model.
 */
public record Threshold(
    String place,
    String season,
    String measure,
    String value,
    String action,
    List<String> sourceKeys,
    String year,
    String read,
    String note) {

  /**
   * Copies the keys.
   *
   * @param place where it applies
   * @param season when it applies
   * @param measure what is counted, with its unit, as in {@code mites per 100 bees}
   * @param value number or range, in the unit of the measure, as text
   * @param action what the source says to do, and for which count
   * @param sourceKeys keys of its sources in the bibliography
   * @param year year of the source, several separated by semicolons, empty if undated
   * @param read how the source was read for this value
   * @param note what else to know, possibly empty
   */
  public Threshold {
    sourceKeys = List.copyOf(sourceKeys);
  }
}
