package org.undercap.lesson;

import java.util.List;
import org.undercap.internal.Catalogue;
import org.undercap.internal.CsvResource;
import org.undercap.internal.CsvRow;
import org.undercap.parameter.Kind;
import org.undercap.source.Bibliography;

/** Numbers that a lesson begins with, from {@code set-ups.csv}. */
final class SetUps {
  private static final Catalogue<List<Double>> NUMBERS =
      Catalogue.of(
          "lesson set-up", CsvResource.read(SetUps.class, "set-ups.csv"), "id", SetUps::values);

  private SetUps() {}

  private static List<Double> values(CsvRow row) {
    Kind.of(row.required("kind"));
    row.required("unit");
    Bibliography.shipped().checkKeys(row.parts("source"));
    return row.numbers("value");
  }

  static double number(String id) {
    return NUMBERS.get(id).get(0);
  }

  static int whole(String id) {
    return (int) number(id);
  }

  static List<Double> numbers(String id) {
    return NUMBERS.get(id);
  }
}
