package org.undercap.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.undercap.internal.CsvRow;
import org.undercap.monitoring.Interval;
import org.undercap.source.Bibliography;

/**
 * A published finding that the model is held against.
 *
 * @param id short name
 * @param group subject that it belongs to
 * @param quantity what was found
 * @param published the finding as published
 * @param accepted intervals in which the model must lie (unit as below): none where the finding is
 *     a direction, one for all numbers, or one for each number
 * @param unit unit of the numbers; empty if several
 * @param howToReproduce which run or formula answers it
 * @param sourceKeys keys of its sources in the bibliography
 * @param read how the sources were read
 * @param fitted whether a parameter or method was calibrated to it, so that agreement is no
 *     independent confirmation
 * @param kind what it is about
 */
public record PublishedCheck(
    String id,
    String group,
    String quantity,
    String published,
    List<Interval> accepted,
    String unit,
    String howToReproduce,
    List<String> sourceKeys,
    String read,
    boolean fitted,
    Kind kind) {
  /**
   * Copies the lists.
   *
   * @param id short name
   * @param group subject that it belongs to
   * @param quantity what was found
   * @param published the finding as published
   * @param accepted intervals in which the model must lie
   * @param unit unit of the numbers
   * @param howToReproduce which run or formula answers it
   * @param sourceKeys keys of its sources in the bibliography
   * @param read how the sources were read
   * @param fitted whether a parameter or method was calibrated to it
   * @param kind what it is about
   */
  public PublishedCheck {
    accepted = List.copyOf(accepted);
    sourceKeys = List.copyOf(sourceKeys);
  }

  static PublishedCheck of(CsvRow row) {
    return new PublishedCheck(
        row.required("id"),
        row.required("group"),
        row.required("quantity"),
        row.required("published"),
        intervals(row),
        row.text("unit"),
        row.required("how_to_reproduce"),
        Bibliography.shipped().checkKeys(row.parts("source")),
        row.required("read"),
        fitted(row),
        kind(row));
  }

  private static List<Interval> intervals(CsvRow row) {
    List<Double> low = row.numbers("accept_low");
    List<Double> high = row.numbers("accept_high");
    if (low.size() != high.size()) {
      throw row.defect(low.size() + " lower ends, but " + high.size() + " upper ends");
    }
    List<Interval> intervals = new ArrayList<>();
    for (int i = 0; i < low.size(); i++) {
      intervals.add(new Interval(low.get(i), high.get(i)));
    }
    return intervals;
  }

  private static boolean fitted(CsvRow row) {
    return switch (row.required("fitted")) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw row.defect("fitted must be yes or no");
    };
  }

  private static Kind kind(CsvRow row) {
    String words = row.required("kind");
    return Arrays.stream(Kind.values())
        .filter(kind -> kind.words.equals(words))
        .findFirst()
        .orElseThrow(() -> row.defect("kind must be 'bees and mites' or 'formula'"));
  }

  /** What a finding is about. */
  public enum Kind {
    /** Bees and mites: the model may be wrong. */
    BIOLOGY("bees and mites"),
    /** A formula, physics or arithmetic that must be right whatever bees and mites do. */
    FORMULA("formula");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /**
     * Its words.
     *
     * @return as in the table of the findings
     */
    public String words() {
      return words;
    }
  }
}
