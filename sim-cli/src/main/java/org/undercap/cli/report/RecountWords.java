package org.undercap.cli.report;

import java.time.LocalDate;
import java.util.Optional;
import org.undercap.advice.Followup;
import org.undercap.advice.NextWash;
import org.undercap.cli.output.Numbers;
import org.undercap.monitoring.Recheck;

/** What a count after a treatment will say. */
final class RecountWords {
  /** A wash that misses more failures than this says little by itself (fraction). */
  private static final double TELLS = 0.8;

  private static final int HUNDRED = 100;

  private static final String COLD =
      "Count again on a mild day (most are too cold then to open a hive), or count a week's fall on a"
          + " board. ";

  private RecountWords() {}

  /**
   * Sentences without a full stop at their end.
   *
   * @param followup what the count will say
   * @param limit mites on 100 bees at which the keeper wants to act
   * @param next when the plan treats again, if it does
   * @param cold whether hives stay closed on that day
   */
  static String of(Followup followup, double limit, Optional<LocalDate> next, boolean cold) {
    Recheck expected = followup.expected();
    double most = most(expected, limit);
    boolean evenSo = stillTooMany(followup, limit);
    String tells =
        followup.noticed() >= TELLS || evenSo
            ? ""
            : ". One wash alone finds out only about "
                + Figures.inHundred(followup.noticed())
                + " of 100 failures";
    int many = (int) Math.ceil(most);
    String treat = evenSo ? "" : ". At " + many + " or more treat again" + because(limit);
    String failed =
        ". At " + expected.alarm() + " or more it probably failed, or many mites came in";
    return (cold ? COLD + "In a wash of " : "Count again: wash ")
        + expected.bees()
        + " bees with alcohol"
        + (cold ? ": if" : ". If")
        + " it worked, expect about "
        + mites(expected.expected())
        + " ("
        + Numbers.range(expected.range().low(), expected.range().high(), 2)
        + " in 8 of 10 colonies); untreated it would be about "
        + Figures.whole(followup.untreated())
        + (many < expected.alarm() ? treat + failed : failed + treat)
        + tells
        + (evenSo ? ". Even if it worked treat again" + because(limit) + waiting(next) : "");
  }

  /**
   * What a wash of an untreated colony is for, without a full stop.
   *
   * @param wash the wash
   * @param limit mites on 100 bees at which the keeper wants to act
   * @param cold whether hives stay closed on that day
   */
  static String of(NextWash wash, double limit, boolean cold) {
    return (cold ? COLD : "")
        + "Wash "
        + wash.bees()
        + " bees with alcohol, no treatment before. "
        + treatAt(wash, limit)
        + ". With fewer, compare again with the new count";
  }

  /** As in {@code Treat at 9 or more mites (the limit is 3 on 100 bees)}. */
  static String treatAt(NextWash wash, double limit) {
    return "Treat at " + wash.treatAt() + " or more mites" + because(limit);
  }

  private static String because(double limit) {
    return " (the limit is " + Numbers.exact(limit) + " on 100 bees)";
  }

  private static String waiting(Optional<LocalDate> next) {
    return next.map(day -> " before " + DateWords.day(day)).orElse(OutlookWords.FIND);
  }

  /** Whether even a treatment that works leaves more than the keeper wants. */
  static boolean stillTooMany(Followup followup, double limit) {
    return followup.expected().expected() >= most(followup.expected(), limit);
  }

  private static double most(Recheck expected, double limit) {
    return limit * expected.bees() / HUNDRED;
  }

  private static String mites(double number) {
    String text = number < 0.5 ? "no" : Figures.whole(number);
    return text + (text.equals("1") ? " mite" : " mites");
  }
}
