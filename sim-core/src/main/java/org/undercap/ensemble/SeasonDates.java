package org.undercap.ensemble;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.undercap.climate.Climate;
import org.undercap.climate.Hemisphere;
import org.undercap.climate.SeasonDay;
import org.undercap.parameter.ParameterId;
import org.undercap.parameter.ParameterSet;

/**
 * The days of a run that outcomes look at.
 *
 * @param winterBeesFrom first day on which the brood that is judged emerges
 * @param winterBeesUntil last such day
 * @param judged which brood that is
 * @param midwinter midwinter, if it lies in the run
 * @param endOfWinter end of winter, if it lies in the run
 * @param countDates days on which mites per 100 bees are told
 */
public record SeasonDates(
    LocalDate winterBeesFrom,
    LocalDate winterBeesUntil,
    JudgedBrood judged,
    Optional<LocalDate> midwinter,
    Optional<LocalDate> endOfWinter,
    List<LocalDate> countDates) {
  private static final int COUNTS = 3;
  private static final int HALF_A_YEAR_MONTHS = 6;

  /** The brood by which harm is judged. */
  public enum JudgedBrood {
    /** That of the bees that must live through winter. */
    WINTER_BEES,
    /** That which still emerges when the time of winter bees is over or nearly so. */
    LATE,
    /** All that emerges in a run in which no winter bees are reared. */
    OF_THE_RUN
  }

  /**
   * Checks the days.
   *
   * @param winterBeesFrom first day on which the brood that is judged emerges
   * @param winterBeesUntil last such day, not before the first
   * @param judged which brood that is
   * @param midwinter midwinter, if it lies in the run
   * @param endOfWinter end of winter, if it lies in the run
   * @param countDates days on which mites per 100 bees are told
   * @throws IllegalArgumentException if the judged brood ends before it begins
   */
  public SeasonDates {
    countDates = List.copyOf(countDates);
    if (winterBeesUntil.isBefore(winterBeesFrom)) {
      throw new IllegalArgumentException(
          "brood from " + winterBeesFrom + " to " + winterBeesUntil + " ends before it begins");
    }
  }

  /**
   * Whether other brood than that of the winter bees is judged.
   *
   * @return true if the run has too little or nothing of the time in which they are reared
   */
  public boolean lateBrood() {
    return judged != JudgedBrood.WINTER_BEES;
  }

  /**
   * The dates of a run: winter bees are those that emerge in the 60 days before laying falls below
   * a tenth of its yearly peak, or at a fixed time where it never does.
   *
   * @param climate place, in its own months
   * @param start first day
   * @param end last day
   * @param parameters the numbers named {@code winterBees...} and {@code season...}
   * @return the dates
   */
  public static SeasonDates of(
      Climate climate, LocalDate start, LocalDate end, ParameterSet parameters) {
    Rearing rearing = winterBees(climate, start, parameters);
    int least = (int) parameters.value(ParameterId.WINTER_BEES_LEAST);
    JudgedBrood judged = JudgedBrood.WINTER_BEES;
    if (rearing.from.isAfter(end)) {
      judged = JudgedBrood.OF_THE_RUN;
      rearing = new Rearing(start, end);
    } else if (ChronoUnit.DAYS.between(start, rearing.until) < least
        && !rearing.from.isAfter(start)) {
      judged = JudgedBrood.LATE;
      int days = (int) parameters.value(ParameterId.WINTER_BEES_DAYS);
      rearing = new Rearing(start, start.plusDays(days - 1L));
    }
    Optional<LocalDate> midwinter =
        next(climate, start, end, parameters, ParameterId.SEASON_MIDWINTER);
    Optional<LocalDate> spring =
        next(climate, midwinter.orElse(start), end, parameters, ParameterId.SEASON_END_OF_WINTER);
    return new SeasonDates(
        rearing.from, min(rearing.until, end), judged, midwinter, spring, counts(start, end));
  }

  /**
   * Whether an outcome can be told: some need midwinter or the end of winter to lie in the run.
   *
   * @param outcome the outcome
   * @return true if it can be told
   */
  public boolean tells(Outcome outcome) {
    return switch (outcome) {
      case WEAKENED_AT_MIDWINTER, MITES_AT_MIDWINTER, DAYS_ABOVE_AFTER_MIDWINTER ->
          midwinter().isPresent();
      case BEES_AFTER_WINTER -> endOfWinter().isPresent();
      case MITES_PER_100_SECOND -> countDates().size() > 1;
      case MITES_PER_100_LAST -> countDates().size() > 2;
      default -> true;
    };
  }

  /**
   * Days on which winter bees emerge.
   *
   * @param from first day
   * @param until last day
   */
  public record Rearing(LocalDate from, LocalDate until) {}

  /**
   * The whole time in which winter bees emerge, also where a run has only its end: it ends on the
   * first day from the start on, or up to one rearing before, on which potential laying falls below
   * the share. That there is such a time of fixed length is an assumption.
   *
   * @param climate place, in its own months
   * @param start first day of a run
   * @param parameters the numbers named {@code winterBees...}
   * @return the days
   */
  public static Rearing winterBees(Climate climate, LocalDate start, ParameterSet parameters) {
    double low = parameters.value(ParameterId.WINTER_BEES_LAYING_SHARE) * climate.eggs().max();
    int days = (int) parameters.value(ParameterId.WINTER_BEES_DAYS);
    for (int day = -days + 1; day <= SeasonDay.DAYS; day++) {
      LocalDate date = start.plusDays(day);
      if (eggs(climate, date) < low && eggs(climate, date.minusDays(1)) >= low) {
        return new Rearing(date.minusDays(days), date);
      }
    }
    int year = start.getYear();
    LocalDate until = date(climate, year, parameters, ParameterId.WINTER_BEES_DEFAULT_UNTIL);
    year += until.isBefore(start.minusDays(days)) ? 1 : 0;
    return new Rearing(
        date(climate, year, parameters, ParameterId.WINTER_BEES_DEFAULT_FROM),
        date(climate, year, parameters, ParameterId.WINTER_BEES_DEFAULT_UNTIL));
  }

  private static double eggs(Climate climate, LocalDate date) {
    return climate.potentialEggs(SeasonDay.of(date));
  }

  private static LocalDate date(
      Climate climate, int year, ParameterSet parameters, ParameterId id) {
    LocalDate north = LocalDate.ofYearDay(2001, (int) parameters.value(id)).withYear(year);
    return climate.hemisphere() == Hemisphere.NORTH
        ? north
        : north.plusMonths(HALF_A_YEAR_MONTHS).withYear(year);
  }

  private static Optional<LocalDate> next(
      Climate climate, LocalDate start, LocalDate end, ParameterSet parameters, ParameterId id) {
    LocalDate date = date(climate, start.getYear(), parameters, id);
    LocalDate next =
        date.isAfter(start) ? date : date(climate, start.getYear() + 1, parameters, id);
    return next.isAfter(end) ? Optional.empty() : Optional.of(next);
  }

  private static LocalDate min(LocalDate a, LocalDate b) {
    return a.isBefore(b) ? a : b;
  }

  /**
   * A third, two thirds and the last day of the run, each moved to the first of its month where
   * that lies in the run.
   */
  private static List<LocalDate> counts(LocalDate start, LocalDate end) {
    long days = ChronoUnit.DAYS.between(start, end);
    return LongStream.rangeClosed(1, COUNTS)
        .mapToObj(i -> firstOfMonth(start, start.plusDays(days * i / COUNTS)))
        .distinct()
        .toList();
  }

  private static LocalDate firstOfMonth(LocalDate start, LocalDate date) {
    LocalDate first = date.withDayOfMonth(1);
    return first.isAfter(start) ? first : date;
  }
}
