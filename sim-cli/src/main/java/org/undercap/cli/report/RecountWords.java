package org.undercap.cli.report;

import org.undercap.advice.Followup;
import org.undercap.cli.output.Numbers;
import org.undercap.monitoring.Recheck;

/** What a count after a treatment will say. */
final class RecountWords {
  /** A wash that misses more failures than this says little by itself (fraction). */
  private static final double TELLS = 0.8;

  private RecountWords() {}

  /** Sentences without a full stop at their end. */
  static String of(Followup followup) {
    Recheck expected = followup.expected();
    String tells =
        followup.noticed() >= TELLS
            ? ""
            : ". One wash alone finds out only about "
                + Figures.inHundred(followup.noticed())
                + " of 100 failures";
    return "Count again: wash "
        + expected.bees()
        + " bees with alcohol. If it worked, expect about "
        + mites(expected.expected())
        + " ("
        + Numbers.range(expected.range().low(), expected.range().high(), 2)
        + " in 8 of 10 colonies); untreated it would be about "
        + Figures.whole(followup.untreated())
        + ". Alarm at "
        + expected.alarm()
        + " or more: it failed, or many mites came in"
        + tells;
  }

  private static String mites(double number) {
    String text = number < 0.5 ? "no" : Figures.whole(number);
    return text + (text.equals("1") ? " mite" : " mites");
  }
}
