package org.undercap.monitoring;

import java.util.List;
import org.undercap.internal.Catalogue;
import org.undercap.internal.Checks;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.source.Bibliography;

/**
 * An efficacy that a treatment is required to have, from {@code efficacy-minimums.csv}.
 *
 * @param id short name
 * @param words what it applies to
 * @param share the efficacy (fraction)
 * @param sourceKeys keys of its sources in the bibliography
 * @param note what else to know
 */
public record EfficacyMinimum(
    String id, String words, double share, List<String> sourceKeys, String note) {
  /**
   * Checks the share.
   *
   * @param id short name
   * @param words what it applies to
   * @param share 0 to 1 (fraction)
   * @param sourceKeys keys of its sources in the bibliography
   * @param note what else to know
   * @throws IllegalArgumentException if the share is out of range
   */
  public EfficacyMinimum {
    Checks.share(share, "minimum efficacy");
    sourceKeys = List.copyOf(sourceKeys);
  }

  /**
   * The minimum of a name.
   *
   * @param id as in {@code synthetic}
   * @return the minimum
   * @throws IllegalArgumentException if there is none; the message lists the names
   */
  public static EfficacyMinimum of(String id) {
    return Holder.MINIMUMS.get(id);
  }

  /**
   * All minimums.
   *
   * @return in the order of the table
   */
  public static List<EfficacyMinimum> all() {
    return Holder.MINIMUMS.all();
  }

  private static EfficacyMinimum read(CsvRow row) {
    return new EfficacyMinimum(
        row.required("id"),
        row.required("words"),
        row.number("share"),
        Bibliography.shipped().checkKeys(row.parts("source")),
        row.text("note"));
  }

  private static final class Holder {
    static final Catalogue<EfficacyMinimum> MINIMUMS =
        Catalogue.of(
            "efficacy minimum",
            CsvResource.read(EfficacyMinimum.class, "efficacy-minimums.csv"),
            "id",
            EfficacyMinimum::read);
  }
}
