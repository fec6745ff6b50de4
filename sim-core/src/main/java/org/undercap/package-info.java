/**
 * Simulates the population of varroa mites in one honey bee colony, day by day.
 *
 * <p>Everything lives in the packages below this one. They build on each other in one direction:
 * published sources and parameters first, then climate and hive, then the day step of the model,
 * the simulation that runs it, treatments, and at last scenarios, which put a whole season on
 * dates.
 *
 * <p>A tour: {@link org.undercap.scenario.io.ScenarioReader} reads what a user wrote; {@link
 * org.undercap.simulation.Simulator} runs colonies through the days; {@link
 * org.undercap.ensemble.Ensemble} runs one scenario many times with all that is not known drawn
 * anew; {@link org.undercap.comparison.Comparison} holds plans against each other; {@link
 * org.undercap.calibration.CountFit} and {@link org.undercap.calibration.GrowthFit} tune
 * parameters; {@link org.undercap.study.OutcomeStudy} with {@link
 * org.undercap.sensitivity.SobolIndices} or {@link org.undercap.sensitivity.ElementaryEffects}
 * tells which of them matter. Parts of the model are replaced through {@link
 * org.undercap.model.Submodels}.
 *
 * <p>The library prints nothing, never ends the program, and reads neither the clock nor the
 * machine's language or time zone: the same input gives the same result everywhere.
 */
package org.undercap;
