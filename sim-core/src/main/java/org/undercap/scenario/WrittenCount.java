package org.undercap.scenario;

import java.time.LocalDate;
import org.undercap.monitoring.Count;

/**
 * A count of mites as it was written.
 *
 * @param date day of the count and where it stands
 * @param count the count
 */
public record WrittenCount(Written<LocalDate> date, Count count) {}
