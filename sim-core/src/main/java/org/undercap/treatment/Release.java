package org.undercap.treatment;

import java.util.List;
import org.undercap.internal.Checks;

/**
 * How much of one application acts on each day after it, from the day of application (age 0) on.
 */
public sealed interface Release {
  /**
   * What acts on a day.
   *
   * @param age whole days since the application, at least 0
   * @return amount (1 = the method's full amount)
   */
  double at(int age);

  /**
   * How long the application acts.
   *
   * @return days, at least 1; the amount is 0 from this age on
   */
  int days();

  /**
   * Single dose: shares of the effect on the day of application and the days after it.
   *
   * @param shares shares of days 0, 1, 2, .. (fraction)
   */
  record Pulse(List<Double> shares) implements Release {
    /**
     * Checks the shares.
     *
     * @param shares each at least 0 and finite, at least one
     * @throws IllegalArgumentException if a share is out of range or none is given
     */
    public Pulse {
      shares = List.copyOf(shares);
      if (shares.isEmpty()) {
        throw new IllegalArgumentException("a pulse needs at least one share");
      }
      shares.forEach(share -> Checks.notNegative(share, "share of a pulse"));
    }

    @Override
    public double at(int age) {
      return age < shares.size() ? shares.get(age) : 0;
    }

    @Override
    public int days() {
      return shares.size();
    }
  }

  /**
   * Slow release that fades: {@code exp(-ln 2 a / halfLife) (1 - exp(-(a + 1) / lag))} at age a.
   *
   * @param halfLife time in which the release falls by half (days)
   * @param lag time in which it builds up (days); 0 for none
   * @param days days until it is spent or taken out (days)
   */
  record Decay(double halfLife, double lag, int days) implements Release {
    /**
     * Checks the times.
     *
     * @param halfLife above 0 (days)
     * @param lag at least 0 (days)
     * @param days at least 1 (days)
     * @throws IllegalArgumentException if a time is out of range
     */
    public Decay {
      Checks.positive(halfLife, "half-life (days)");
      Checks.notNegative(lag, "lag (days)");
      Checks.positive(days, "days of release");
    }

    @Override
    public double at(int age) {
      if (age >= days) {
        return 0;
      }
      double left = StrictMath.exp(-StrictMath.log(2) * age / halfLife);
      return lag == 0 ? left : left * (1 - StrictMath.exp(-(age + 1) / lag));
    }
  }

  /**
   * Slow release at a constant rate after a rise: {@code min(1, (a + 1) / ramp)} at age a.
   *
   * @param days days until it is taken out (days)
   * @param ramp days until it is full (days)
   */
  record Plateau(int days, double ramp) implements Release {
    /**
     * Checks the times.
     *
     * @param days at least 1 (days)
     * @param ramp above 0 (days)
     * @throws IllegalArgumentException if a time is out of range
     */
    public Plateau {
      Checks.positive(days, "days of release");
      Checks.positive(ramp, "ramp (days)");
    }

    @Override
    public double at(int age) {
      return age < days ? Math.min(1.0, (age + 1) / ramp) : 0;
    }
  }
}
