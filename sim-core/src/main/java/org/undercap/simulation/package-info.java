/**
 * Runs of the model over days: start with {@link org.undercap.simulation.Simulator}.
 *
 * <p>{@link org.undercap.simulation.StartShape} makes the colony of a date, {@link
 * org.undercap.simulation.DailyDrivers} lays season, weather and arrivals out day by day, an {@link
 * org.undercap.simulation.Intervention} acts on the days it wants to, and a {@link
 * org.undercap.simulation.DayObserver} sees every day; {@link org.undercap.simulation.DailyTable}
 * is the observer that keeps them. The engine knows neither treatments nor outputs.
 */
package org.undercap.simulation;
