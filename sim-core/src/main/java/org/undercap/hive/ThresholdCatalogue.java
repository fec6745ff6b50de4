package org.undercap.hive;

import java.util.ArrayList;
import java.util.List;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.source.Bibliography;

/** The published thresholds that ship with the library, side by side. */
public final class ThresholdCatalogue {

  private static final String FILE = "thresholds.csv";

  private final List<Threshold> thresholds;

  private ThresholdCatalogue(List<CsvRow> rows) {
    List<Threshold> list = new ArrayList<>();
    for (CsvRow row : rows) {
      try {
        list.add(toThreshold(row));
      } catch (IllegalArgumentException e) {
        throw row.defect(e);
      }
    }
    thresholds = List.copyOf(list);
  }

  /**
   * The catalogue that ships with the library.
   *
   * @return the one shared, immutable catalogue
   */
  public static ThresholdCatalogue shipped() {
    return Holder.SHIPPED;
  }

  /**
   * All thresholds.
   *
   * @return an unmodifiable list in the order of the table
   */
  public List<Threshold> all() {
    return thresholds;
  }

  private static Threshold toThreshold(CsvRow row) {
    return new Threshold(
        row.required("place"),
        row.required("season"),
        row.required("measure"),
        row.required("value"),
        row.required("action"),
        Bibliography.shipped().checkKeys(row.parts("source")),
        row.text("year"),
        row.required("read"),
        row.text("note"));
  }

  private static final class Holder {
    static final ThresholdCatalogue SHIPPED =
        new ThresholdCatalogue(CsvResource.read(ThresholdCatalogue.class, FILE));
  }
}
