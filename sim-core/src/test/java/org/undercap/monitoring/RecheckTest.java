package org.undercap.monitoring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

class RecheckTest {
  private static final ParameterSet SET = ParameterSet.shipped();

  private static double[] all(double value) {
    double[] members = new double[200];
    Arrays.fill(members, value);
    return members;
  }

  private static Recheck of(double... members) {
    return Recheck.of(members, 300, WashMethod.ALCOHOL, SET);
  }

  @Test
  void likeMembersGiveABinomialCount() {
    // all recovered: 300 bees, 1 in 100 infested: binomial mean 3, P(at most 6) 0.967, P(5) 0.917
    ParameterSet sure = SET.with(ParameterId.COUNT_RECOVERY_WASH, 1);
    Recheck recheck = Recheck.of(all(0.01), 300, WashMethod.ALCOHOL, sure);
    assertEquals(3, recheck.expected(), 1e-9);
    assertEquals(new Interval(1, 5), recheck.range());
    assertEquals(7, recheck.alarm());
    assertEquals(1 - new CountLaw.Binomial(300, 0.01).cumulative(6), recheck.falseAlarm(), 1e-9);
  }

  @Test
  void alarmIsTheSmallestRareCount() {
    Recheck recheck = of(0.001, 0.004, 0.01, 0.02, 0.05);
    assertTrue(recheck.falseAlarm() <= 0.05);
    assertTrue(recheck.alarm() > recheck.range().high());
    assertTrue(recheck.expected() > 0.9 * 300 * 0.017 && recheck.expected() < 300 * 0.017);
  }

  @Test
  void failuresAreNoticedTheMoreTheWorseTheyAre() {
    Recheck recheck = of(all(0.01));
    double mild = recheck.noticed(all(0.02), WashMethod.ALCOHOL, SET);
    double bad = recheck.noticed(all(0.06), WashMethod.ALCOHOL, SET);
    assertTrue(mild > recheck.falseAlarm() && mild < 0.6, "mild " + mild);
    assertTrue(bad > 0.99, "bad " + bad);
  }

  @Test
  void noMitesAndTooManyMites() {
    Recheck none = of(all(0));
    assertEquals(0, none.expected());
    assertEquals(1, none.alarm());
    assertEquals(0, none.falseAlarm());
    assertTrue(of(all(3)).expected() < 300);
  }

  @Test
  void membersThatCannotBeAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> of());
    assertThrows(IllegalArgumentException.class, () -> of(0.01, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> of(-0.01));
    assertThrows(
        IllegalArgumentException.class, () -> Recheck.of(all(0.01), 0, WashMethod.ALCOHOL, SET));
  }
}
