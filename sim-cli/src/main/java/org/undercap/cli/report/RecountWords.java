package org.undercap.cli.report;

import org.undercap.advice.Followup;
import org.undercap.cli.output.Numbers;
import org.undercap.monitoring.Recheck;

/** What a count after a treatment will say. */
final class RecountWords {
  /** A wash that misses more failures than this says little by itself (fraction). */
  private static final double TELLS = 0.8;

  private RecountWords() {}

  /** A sentence without a full stop at its end. */
  static String of(Followup followup) {
    Recheck expected = followup.expected();
    String tells =
        followup.noticed() >= TELLS
            ? ""
            : ". One wash may miss a failure: it notices about "
                + Figures.inHundred(followup.noticed())
                + " of 100";
    return "Count again: wash "
        + expected.bees()
        + " bees with alcohol. If it worked, expect about "
        + mites(expected.expected())
        + " ("
        + Numbers.range(expected.range().low(), expected.range().high(), 2)
        + " in 8 of 10 colonies); without treatment about "
        + Figures.whole(followup.untreated())
        + ". "
        + expected.alarm()
        + " or more are an alarm: it failed, or many mites came in"
        + tells;
  }

  private static String mites(double number) {
    String text = Figures.whole(number);
    return text + (text.equals("1") ? " mite" : " mites");
  }
}
