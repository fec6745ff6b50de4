package org.undercap.scenario;

import org.undercap.hive.KeeperUnits;

/** Reads how many bees were in the jar: a number, or cups. */
public final class SampleOfBees {

  private static final UnitWords<Boolean> WORDS =
      UnitWords.<Boolean>named("300 bees, 300 or half a cup")
          .plain(false)
          .fractions()
          .unit(false, "bees", "bee")
          .unit(true, "cup", "cups", "cup of bees", "cups of bees", "us cup", "us cups");

  private SampleOfBees() {}

  /**
   * The bees of a sample.
   *
   * @param text as typed: {@code 300}, {@code half a cup}, {@code 1/2 cup}
   * @return the number (bees)
   * @throws BadValueException if it is not a number with one of these units
   */
  public static double parse(String text) throws BadValueException {
    Amount<Boolean> amount = WORDS.parse(text);
    return amount.unit()
        ? StrictMath.rint(amount.number() * KeeperUnits.shipped().beesPerCup())
        : amount.number();
  }
}
