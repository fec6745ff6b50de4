package org.undercap.scenario;

import java.time.LocalDate;

/** How long a run lasts, as a user says it: until a date, or for a number of days. */
public sealed interface Horizon {

  /**
   * The last day of a run.
   *
   * @param start its first day
   * @return the last day
   */
  LocalDate end(LocalDate start);

  /**
   * Until a date.
   *
   * @param last the last day
   */
  record Until(LocalDate last) implements Horizon {
    @Override
    public LocalDate end(LocalDate start) {
      return last;
    }
  }

  /**
   * For a number of days.
   *
   * @param days days after the first day
   */
  record Days(int days) implements Horizon {
    @Override
    public LocalDate end(LocalDate start) {
      return start.plusDays(days);
    }
  }

  /**
   * Reads a horizon.
   *
   * @param text as typed: {@code 2027-04-01} or {@code 200 days}
   * @return the horizon
   * @throws BadValueException if it is neither a date nor a number of days in the accepted range
   */
  static Horizon parse(String text) throws BadValueException {
    if (text.indexOf('-', 1) > 0) {
      return new Until(Quantities.date(text));
    }
    double days = InputLimits.shipped().get("horizon").check(Quantities.days(text));
    return new Days((int) StrictMath.rint(days));
  }
}
