package org.undercap.comparison;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Optional;
import org.undercap.climate.Hemisphere;
import org.undercap.internal.Checks;
import org.undercap.parameter.Parameter;
import org.undercap.parameter.ParameterCatalogue;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * Share of colonies that die in winter by their mites in October, as surveys found it: {@code p0 +
 * (1 - p0) / (1 + (x50 / x)^slope)} for x mites per 100 bees.
 *
 * <p>It is a curve through published survey figures and no result of the model. Half of the
 * colonies that would live without mites die at {@code x50}, which is known only roughly: show
 * {@link #shipped()} with {@link #worst()} and {@link #best()} as a band.
 *
 * @param background share lost without mites (fraction)
 * @param half infestation at which half of the others are lost (mites per 100 bees)
 * @param slope steepness of the curve (exponent)
 */
public record WinterRisk(double background, double half, double slope) {
  private static final MonthDay OCTOBER = MonthDay.of(Month.OCTOBER, 15);
  private static final MonthDay OCTOBER_OF_THE_SOUTH = MonthDay.of(Month.APRIL, 15);

  /**
   * Checks the constants.
   *
   * @param background at least 0 and below 1
   * @param half above 0 (mites per 100 bees)
   * @param slope above 0
   * @throws IllegalArgumentException if a constant is out of range
   */
  public WinterRisk {
    if (!(background >= 0 && background < 1)) {
      throw new IllegalArgumentException(
          "share lost without mites " + background + " must be at least 0 and below 1");
    }
    Checks.positive(half, "infestation at which half are lost (mites per 100 bees)");
    Checks.positive(slope, "slope");
  }

  /**
   * The curve of a parameter set.
   *
   * @param parameters where to find its constants
   * @return the curve
   */
  public static WinterRisk of(ParameterSet parameters) {
    return new WinterRisk(
        parameters.value(ParameterId.WINTER_RISK_BACKGROUND),
        parameters.value(ParameterId.WINTER_RISK_HALF),
        parameters.value(ParameterId.WINTER_RISK_SLOPE));
  }

  /**
   * The curve of the shipped parameters.
   *
   * @return the middle of the band
   */
  public static WinterRisk shipped() {
    return of(ParameterSet.shipped());
  }

  /**
   * The curve with the lowest believable infestation at which half are lost.
   *
   * @return the upper edge of the band
   */
  public static WinterRisk worst() {
    return shipped().withHalf(half(ParameterCatalogue.shipped()).low().get(0));
  }

  /**
   * The curve with the highest believable infestation at which half are lost.
   *
   * @return the lower edge of the band
   */
  public static WinterRisk best() {
    return shipped().withHalf(half(ParameterCatalogue.shipped()).high().get(0));
  }

  private static Parameter half(ParameterCatalogue catalogue) {
    return catalogue.get(ParameterId.WINTER_RISK_HALF);
  }

  private WinterRisk withHalf(double other) {
    return new WinterRisk(background, other, slope);
  }

  /**
   * The day of a run that stands for October, or for April in the south.
   *
   * @param hemisphere half of the earth
   * @param start first day of the run
   * @param end last day of the run
   * @return the middle of the first such month in the run; empty if there is none
   */
  public static Optional<LocalDate> dayOfSurvey(
      Hemisphere hemisphere, LocalDate start, LocalDate end) {
    MonthDay middle = hemisphere == Hemisphere.NORTH ? OCTOBER : OCTOBER_OF_THE_SOUTH;
    LocalDate first = middle.atYear(start.getYear());
    LocalDate day = first.isBefore(start) ? first.plusYears(1) : first;
    return day.isAfter(end) ? Optional.empty() : Optional.of(day);
  }

  /**
   * Share of colonies lost.
   *
   * @param mitesPer100Bees mites on bees in October (mites per 100 bees), at least 0
   * @return share lost over winter (fraction)
   * @throws IllegalArgumentException if the number is out of range
   */
  public double lost(double mitesPer100Bees) {
    Checks.notNegative(mitesPer100Bees, "mites per 100 bees");
    return background + (1 - background) / (1 + StrictMath.pow(half / mitesPer100Bees, slope));
  }

  /**
   * The infestation at which a share of the colonies is lost.
   *
   * @param share share lost (fraction), at least the background and below 1
   * @return mites on bees in October (mites per 100 bees)
   * @throws IllegalArgumentException if no infestation gives this share
   */
  public double mitesPer100BeesAt(double share) {
    if (!(share >= background && share < 1)) {
      throw new IllegalArgumentException(
          "share lost " + share + " must be at least " + background + " and below 1");
    }
    return half * StrictMath.pow((share - background) / (1 - share), 1 / slope);
  }
}
