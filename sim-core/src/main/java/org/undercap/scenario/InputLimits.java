package org.undercap.scenario;

import java.util.List;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;

/**
 * What numbers a scenario file accepts. The limits are wider than what colonies do; they catch
 * slips of the pen, and each of them is an assumption.
 */
public final class InputLimits {

  private static final String FILE = "limits.csv";

  private final Catalogue<InputLimit> limits;

  private InputLimits(List<CsvRow> rows) {
    limits = Catalogue.of("limit", rows, "field", InputLimits::toLimit);
  }

  /**
   * The limits that ship with the library.
   *
   * @return the one shared, immutable table
   */
  public static InputLimits shipped() {
    return Holder.SHIPPED;
  }

  /**
   * The limit of a field.
   *
   * @param field the field, as in {@code colony.bees}
   * @return its limit
   * @throws IllegalArgumentException if the field has none
   */
  public InputLimit get(String field) {
    return limits.get(field);
  }

  /**
   * All limits.
   *
   * @return an unmodifiable list in the order of the table
   */
  public List<InputLimit> all() {
    return limits.all();
  }

  private static InputLimit toLimit(CsvRow row) {
    return new InputLimit(
        row.required("field"),
        row.number("low"),
        row.number("high"),
        row.required("whole").equals("yes"),
        row.required("unit"));
  }

  private static final class Holder {
    static final InputLimits SHIPPED = new InputLimits(CsvResource.read(InputLimits.class, FILE));
  }
}
