package org.undercap.ensemble;

import org.undercap.scenario.Plan;

/**
 * What came of a plan over all members.
 *
 * @param plan the plan
 * @param outcomes outcomes by member; the same member met the same draws under every plan
 * @param bands how the daily curves spread
 */
public record PlanResult(Plan plan, OutcomeTable outcomes, CurveBands bands) {}
