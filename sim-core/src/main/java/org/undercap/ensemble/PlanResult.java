package org.undercap.ensemble;

import java.time.LocalDate;
import java.util.List;
import org.undercap.scenario.Plan;

/**
 * What came of a plan over all members.
 *
 * @param plan the plan
 * @param outcomes outcomes by member; the same member met the same draws under every plan
 * @param bands how the daily curves spread
 * @param washes mites per bee on the days that were asked for
 */
public record PlanResult(Plan plan, OutcomeTable outcomes, CurveBands bands, MitesPerBee washes) {
  static PlanResult empty(Plan plan, Members members, List<LocalDate> washDays) {
    int count = members.settings().members();
    return new PlanResult(
        plan,
        new OutcomeTable(count),
        new CurveBands(members.scenario().days()),
        new MitesPerBee(members.scenario(), washDays, count));
  }
}
