package org.undercap.planning;

import java.time.LocalDate;

/**
 * The last date on which it is still in time to begin.
 *
 * @param date the date
 * @param chance share of the runs in which beginning then harms winter bees at most a little more
 *     than beginning on the best date (fraction)
 */
public record LastStart(LocalDate date, double chance) {}
