package org.undercap.scenario;

/**
 * A number and what it counts.
 *
 * @param <U> type of the unit
 * @param number how many (in {@code unit})
 * @param unit what was counted
 */
public record Amount<U>(double number, U unit) {}
