/**
 * What a user wrote, and what it means on dates.
 *
 * <p>Start with {@link org.undercap.scenario.Scenario}, the meaning: place, days, colony, counts,
 * plans, and a list of everything that was assumed. {@link org.undercap.scenario.WrittenScenario}
 * is what the user typed, with the place of each value in the file; {@link
 * org.undercap.scenario.ScenarioResolver} turns the one into the other. A {@link
 * org.undercap.scenario.Reading} is a scenario or all the {@link org.undercap.scenario.Problem}s of
 * its file. Files are read by {@link org.undercap.scenario.io.ScenarioReader}.
 */
package org.undercap.scenario;
