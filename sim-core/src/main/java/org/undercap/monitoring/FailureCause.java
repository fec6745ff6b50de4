package org.undercap.monitoring;

import java.util.List;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.internal.Nearest;
import org.undercap.source.Bibliography;
import org.undercap.treatment.Method;

/**
 * What may lie behind a poor result of a treatment, from {@code failure-causes.csv}.
 *
 * @param id short name
 * @param words the cause in words
 * @param change how the model run differs from what the keeper wrote
 * @param amount how much: a number, or the name of an arrival level; empty if nothing changes
 * @param next the next cheap observation that tells it from the other causes
 * @param sourceKeys keys of its sources in the bibliography
 */
public record FailureCause(
    String id, String words, Change change, String amount, String next, List<String> sourceKeys) {

  /** How a model run differs from what the keeper wrote. */
  public enum Change {
    /** Not at all: the model as it is. */
    NONE,
    /** A share of the mites resists the substances used (fraction). */
    RESISTANCE,
    /** More mites arrive: an arrival level. */
    ARRIVALS,
    /** The days were warmer (C), or colder if negative. */
    WARMER,
    /** Another amount was given (ratio). */
    DOSE;

    static Change of(String word) {
      for (Change change : values()) {
        if (change.name().equalsIgnoreCase(word)) {
          return change;
        }
      }
      throw Nearest.unknown(
          "change", word, List.of("none", "resistance", "arrivals", "warmer", "dose"));
    }
  }

  /**
   * Copies the keys.
   *
   * @param id short name
   * @param words the cause in words
   * @param change how the model run differs
   * @param amount how much
   * @param next the next cheap observation
   * @param sourceKeys keys of its sources
   */
  public FailureCause {
    sourceKeys = List.copyOf(sourceKeys);
  }

  /**
   * Whether it may lie behind a poor result of a method. Cold matters to what evaporates;
   * resistance is known of synthetic substances only.
   *
   * @param method the method
   * @return true if so
   */
  public boolean concerns(Method method) {
    return switch (change) {
      case WARMER -> method.profile().evaporates();
      case RESISTANCE -> !method.organic();
      case NONE, ARRIVALS, DOSE -> true;
    };
  }

  /**
   * All causes.
   *
   * @return in the order of the table
   */
  public static List<FailureCause> all() {
    return Holder.CAUSES.all();
  }

  double number() {
    return Double.parseDouble(amount);
  }

  private static FailureCause read(CsvRow row) {
    return new FailureCause(
        row.required("id"),
        row.required("words"),
        Change.of(row.required("change")),
        row.text("amount"),
        row.required("next"),
        Bibliography.shipped().checkKeys(row.parts("source")));
  }

  private static final class Holder {
    static final Catalogue<FailureCause> CAUSES =
        Catalogue.of(
            "failure cause",
            CsvResource.read(FailureCause.class, "failure-causes.csv"),
            "id",
            FailureCause::read);
  }
}
