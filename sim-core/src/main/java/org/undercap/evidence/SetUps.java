package org.undercap.evidence;

import java.util.List;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.parameter.Kind;
import org.undercap.source.Bibliography;

/** Numbers that a check needs and its publication does not tell, from {@code set-ups.csv}. */
final class SetUps {
  private static final Catalogue<List<Double>> NUMBERS =
      Catalogue.of("set-up", CsvResource.read(SetUps.class, "set-ups.csv"), "id", SetUps::numbers);

  private SetUps() {}

  private static List<Double> numbers(CsvRow row) {
    Kind.of(row.required("kind"));
    row.required("unit");
    Bibliography.shipped().checkKeys(row.parts("source"));
    return row.numbers("value");
  }

  /** A set-up of one number. */
  static double number(String id) {
    List<Double> numbers = numbers(id);
    if (numbers.size() != 1) {
      throw new IllegalArgumentException(id + " has " + numbers.size() + " values");
    }
    return numbers.get(0);
  }

  /** A set-up of one or several numbers. */
  static List<Double> numbers(String id) {
    return NUMBERS.get(id);
  }
}
