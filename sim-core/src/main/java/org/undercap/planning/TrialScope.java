package org.undercap.planning;

import java.time.LocalDate;
import org.undercap.ensemble.Outcome;
import org.undercap.ensemble.SeasonDates;
import org.undercap.scenario.Scenario;

/**
 * How far trials run: no longer than what they are judged by, which is harm to winter bees and the
 * mites left at midwinter. Both come out as in the whole run.
 *
 * @param scenario the scenario, shortened where possible
 * @param dates the days that outcomes look at
 * @param mitesLeft which outcome tells the mites left: at midwinter, or on the last day of a run
 *     that does not reach midwinter
 */
public record TrialScope(Scenario scenario, SeasonDates dates, Outcome mitesLeft) {
  /**
   * The scope of a scenario.
   *
   * @param whole the scenario with its whole run
   * @return the shortened run
   */
  public static TrialScope of(Scenario whole) {
    SeasonDates dates = dates(whole);
    if (dates.midwinter().isEmpty()) {
      return new TrialScope(whole, dates, Outcome.MITES_AT_END);
    }
    LocalDate midwinter = dates.midwinter().get();
    LocalDate end =
        midwinter.isAfter(dates.winterBeesUntil()) ? midwinter : dates.winterBeesUntil();
    Scenario shortened = whole.withEnd(end);
    return new TrialScope(shortened, dates(shortened), Outcome.MITES_AT_MIDWINTER);
  }

  private static SeasonDates dates(Scenario scenario) {
    return SeasonDates.of(
        scenario.climate(), scenario.start(), scenario.end(), scenario.parameters());
  }

  /**
   * The day on which the mites left are counted.
   *
   * @return midwinter, or the last day
   */
  public LocalDate mitesLeftOn() {
    return dates.midwinter().orElse(scenario.end());
  }
}
