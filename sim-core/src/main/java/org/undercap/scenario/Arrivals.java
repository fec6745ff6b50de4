package org.undercap.scenario;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.undercap.hive.ArrivalCatalogue;
import org.undercap.hive.ArrivalLevel;

/** Reads how many mites arrive from other colonies. */
public final class Arrivals {

  private static final int MONTHS = 12;
  private static final UnitWords<Boolean> WORDS =
      UnitWords.<Boolean>named("1.5 mites a day")
          .plain(true)
          .unit(true, "mites a day", "mites per day", "mites/day", "mite a day", "mite per day");

  private Arrivals() {}

  /**
   * Reads a level of arrivals.
   *
   * @param text as typed: the name of a level that ships with the library, or {@code 1.5 mites a
   *     day}
   * @return the level; a number holds all the year
   * @throws BadValueException if it is neither
   */
  public static ArrivalLevel parse(String text) throws BadValueException {
    if (!text.isEmpty() && Character.isLetter(text.charAt(0))) {
      ArrivalCatalogue shipped = ArrivalCatalogue.shipped();
      List<String> ids = shipped.all().stream().map(ArrivalLevel::id).toList();
      return Lookup.find("level of arrivals", text.toLowerCase(Locale.ROOT), shipped::find, ids);
    }
    double mites = InputLimits.shipped().get("arrivals").check(WORDS.parse(text).number());
    return new ArrivalLevel(
        "constant",
        Quantities.format(mites) + " mites a day in every month",
        Collections.nCopies(MONTHS, mites),
        List.of());
  }
}
