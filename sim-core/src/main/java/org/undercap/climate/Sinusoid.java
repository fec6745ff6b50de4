package org.undercap.climate;

/**
 * A temperature that swings once a year: {@code mean + amplitude * cos(2 pi (doy - warmestDay) /
 * 365)}.
 */
public record Sinusoid(double mean, double amplitude, double warmestDay)
    implements TemperatureCourse {

  /**
   * Checks the constants.
   *
   * @param mean mean of the year (C)
   * @param amplitude half the difference of warmest and coldest day (C, at least 0)
   * @param warmestDay warmest season day (days, 0 to 365; fractions allowed)
   * @throws IllegalArgumentException if the mean is not finite, the amplitude negative or not
   *     finite, or the warmest day outside 0 to 365
   */
  public Sinusoid {
    if (!Double.isFinite(mean)) {
      throw new IllegalArgumentException("mean temperature " + mean + " C must be finite");
    }
    if (!(amplitude >= 0 && Double.isFinite(amplitude))) {
      throw new IllegalArgumentException(
          "temperature amplitude " + amplitude + " C must be finite and >= 0");
    }
    if (!(warmestDay >= 0 && warmestDay <= SeasonDay.DAYS)) {
      throw new IllegalArgumentException(
          "warmest day " + warmestDay + " must be in [0, " + SeasonDay.DAYS + "]");
    }
  }

  @Override
  public double at(int doy) {
    double angle = 2 * Math.PI * (SeasonDay.check(doy) - warmestDay) / SeasonDay.DAYS;
    return mean + amplitude * StrictMath.cos(angle);
  }

  @Override
  public TemperatureCourse warmer(double degrees) {
    return new Sinusoid(mean + degrees, amplitude, warmestDay);
  }

  @Override
  public Sinusoid mirrored() {
    double half = SeasonDay.DAYS / 2.0;
    return new Sinusoid(mean, amplitude, warmestDay + (warmestDay < half ? half : -half));
  }
}
