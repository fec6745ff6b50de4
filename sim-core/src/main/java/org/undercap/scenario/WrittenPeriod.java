package org.undercap.scenario;

import java.time.LocalDate;

/**
 * A span of days as it was written.
 *
 * @param from first day
 * @param until last day
 */
public record WrittenPeriod(Written<LocalDate> from, Written<LocalDate> until) {}
