/**
 * The model: one day in the life of a colony and its mites.
 *
 * <p>Start with {@link org.undercap.model.DayStep}, which takes the steps of a day in their order;
 * each step is a class of its own ({@code Laying}, {@code KeeperRemoval}, {@code Emergence}, {@code
 * BroodAgeing}, {@code CellInvasion}, {@code PhoreticMites}, {@code AdultAgeing}). {@link
 * org.undercap.model.ColonyLanes} is the state, for one colony or for many side by side; {@link
 * org.undercap.model.DayEffects} is all that a keeper or a treatment can do to a colony on a day,
 * and {@link org.undercap.model.DayFlows} is what happened.
 *
 * <p>Four parts can be replaced by parts of one's own: how mites enter cells ({@link
 * org.undercap.model.InvasionRule}), have daughters ({@link org.undercap.model.ReproductionRule})
 * and arrive ({@link org.undercap.model.ArrivalRule}) through {@link org.undercap.model.Submodels};
 * these three are asked once a day for all colonies side by side. The fourth, how temperature
 * changes a treatment, is part of its efficacy profile. {@code OwnSubmodelsTest} shows all four.
 *
 * <p>Numbers of bees, cells and mites are expected values and so real numbers. Hazards are per day:
 * a hazard {@code h} kills the fraction {@code 1 - exp(-h)}. Nothing here knows treatments, dates
 * or outputs.
 */
package org.undercap.model;
