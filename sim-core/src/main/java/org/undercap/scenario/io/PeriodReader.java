package org.undercap.scenario.io;

import java.time.LocalDate;
import java.util.Optional;
import org.undercap.scenario.Quantities;
import org.undercap.scenario.Written;
import org.undercap.scenario.WrittenPeriod;

/** Reads spans of days with the keys {@code from} and {@code until}. */
final class PeriodReader {

  private PeriodReader() {}

  /** A span of days without further keys. */
  static Optional<WrittenPeriod> read(FieldReader period) {
    period.require("from", "until");
    Optional<Written<LocalDate>> from = period.value("from", Quantities::date);
    Optional<Written<LocalDate>> until = period.value("until", Quantities::date);
    period.done();
    if (from.isEmpty() || until.isEmpty()) {
      return Optional.empty();
    }
    return ordered(period, from.get(), until.get());
  }

  /** A span of days, unless it ends before it begins. */
  static Optional<WrittenPeriod> ordered(
      FieldReader map, Written<LocalDate> from, Written<LocalDate> until) {
    if (until.value().isBefore(from.value())) {
      map.refuse(
          "until", until.value() + " lies before the first day " + from.value(), "swap the two?");
      return Optional.empty();
    }
    return Optional.of(new WrittenPeriod(from, until));
  }
}
